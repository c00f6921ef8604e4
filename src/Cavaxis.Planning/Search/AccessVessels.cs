using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Search;

/// <summary>The diameters of the access vessels: sampled, and so measured where the survey measured them.</summary>
internal sealed class AccessVessels
{
    /// <summary>Diameter of a graft for an adult axillary artery, mm (common practice, no source).</summary>
    public const double GraftDiameterMm = 8;

    private const double SuperficialToCommonFemoral = 0.8;
    private readonly Dictionary<(AccessRoute, BodySide), double[]> sorted = [];
    private readonly Dictionary<(AccessRoute, BodySide), Estimate> estimates = [];

    /// <summary>Lays out all access vessels.</summary>
    /// <param name="samples">Sampled anatomies, conditioned on the survey.</param>
    /// <param name="survey">The survey, for the origin of the numbers and for vessels outside the axis model.</param>
    public AccessVessels(AxisSamples samples, IReadOnlyList<VesselEntry> survey)
    {
        foreach (BodySide side in Enum.GetValues<BodySide>())
        {
            Add(AccessRoute.Jugular, side, VesselName.InternalJugularVein, samples, survey);
            Add(AccessRoute.FemoralVein, side, VesselName.CommonFemoralVein, samples, survey);
            Add(AccessRoute.FemoralArtery, side, VesselName.CommonFemoralArtery, samples, survey);
            AddSuperficial(side, survey);
            AddGraft(side);
        }
    }

    /// <summary>The vessel of the survey that a route enters.</summary>
    /// <param name="route">The route.</param>
    /// <returns>Its name in the survey.</returns>
    public static VesselName NameOf(AccessRoute route) => route switch
    {
        AccessRoute.Jugular => VesselName.InternalJugularVein,
        AccessRoute.FemoralVein => VesselName.CommonFemoralVein,
        AccessRoute.FemoralArtery => VesselName.CommonFemoralArtery,
        AccessRoute.AxillaryGraft => VesselName.AxillaryArtery,
        AccessRoute.SuperficialFemoralArtery => VesselName.SuperficialFemoralArtery,
        _ => throw new ArgumentOutOfRangeException(nameof(route), route, "Not a route."),
    };

    /// <summary>The axis dimension that holds a vessel's diameter, or null where the model has none.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="side">The side.</param>
    /// <returns>The dimension, or null.</returns>
    public static AxisDimension? DimensionOf(VesselName vessel, BodySide side) => (vessel, side) switch
    {
        (VesselName.InternalJugularVein, BodySide.Right) => AxisDimension.RightJugularVeinDiameter,
        (VesselName.InternalJugularVein, BodySide.Left) => AxisDimension.LeftJugularVeinDiameter,
        (VesselName.CommonFemoralVein, BodySide.Right) => AxisDimension.RightFemoralVeinDiameter,
        (VesselName.CommonFemoralVein, BodySide.Left) => AxisDimension.LeftFemoralVeinDiameter,
        (VesselName.CommonFemoralArtery, BodySide.Right) => AxisDimension.RightFemoralArteryDiameter,
        (VesselName.CommonFemoralArtery, BodySide.Left) => AxisDimension.LeftFemoralArteryDiameter,
        (VesselName.AxillaryArtery, BodySide.Right) => AxisDimension.RightAxillaryArteryDiameter,
        (VesselName.AxillaryArtery, BodySide.Left) => AxisDimension.LeftAxillaryArteryDiameter,
        (VesselName.CommonCarotidArtery, BodySide.Right) => AxisDimension.RightCarotidArteryDiameter,
        _ => null,
    };

    /// <summary>The vessel's diameter.</summary>
    /// <param name="route">Route.</param>
    /// <param name="side">Side.</param>
    /// <returns>Inner diameter in mm.</returns>
    public Estimate DiameterMm(AccessRoute route, BodySide side) => estimates[(route, side)];

    /// <summary>Probability that a cannula is at most a given fraction of the vessel.</summary>
    /// <param name="route">Route.</param>
    /// <param name="side">Side.</param>
    /// <param name="outerDiameterMm">Outer diameter of the cannula.</param>
    /// <param name="ratio">Greatest acceptable ratio.</param>
    /// <returns>Probability.</returns>
    public double ProbabilityAtMost(AccessRoute route, BodySide side, double outerDiameterMm, double ratio)
    {
        double[] diameters = sorted[(route, side)];
        double least = outerDiameterMm / ratio;
        int low = 0;
        int high = diameters.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (diameters[middle] < least)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return (double)(diameters.Length - low) / diameters.Length;
    }

    private void Add(AccessRoute route, BodySide side, VesselName name, AxisSamples samples, IReadOnlyList<VesselEntry> survey)
    {
        AxisDimension dimension = DimensionOf(name, side)
            ?? throw new InvalidOperationException($"The axis model has no diameter for {name}, {side}.");
        double[] values = samples[dimension].ToArray();
        Array.Sort(values);
        bool measured = survey.Any(entry => entry.Vessel == name && entry.Side == side && entry.DiameterMm is not null);
        Set(route, side, values, measured ? Origin.Measured : Origin.Estimated);
    }

    private void AddSuperficial(BodySide side, IReadOnlyList<VesselEntry> survey)
    {
        VesselEntry? seen = survey.FirstOrDefault(
            entry => entry.Vessel == VesselName.SuperficialFemoralArtery && entry.Side == side && entry.DiameterMm is not null);
        if (seen?.DiameterMm is { } diameter)
        {
            double[] nodes = [Math.Max(0.5, diameter.Value - diameter.Sd), diameter.Value, diameter.Value + diameter.Sd];
            sorted[(AccessRoute.SuperficialFemoralArtery, side)] = nodes;
            estimates[(AccessRoute.SuperficialFemoralArtery, side)] = Estimate.Normal(diameter.Value, diameter.Sd, Origin.Measured);
            return;
        }

        // Four fifths of the common femoral artery: an assumption until someone measures it.
        double[] scaled = [.. sorted[(AccessRoute.FemoralArtery, side)].Select(d => d * SuperficialToCommonFemoral)];
        Set(AccessRoute.SuperficialFemoralArtery, side, scaled, Origin.Estimated);
    }

    /// <summary>The graft is sewn end to side, so its width does not follow the artery's.</summary>
    private void AddGraft(BodySide side) => Set(AccessRoute.AxillaryGraft, side, [GraftDiameterMm], Origin.Estimated);

    private void Set(AccessRoute route, BodySide side, double[] ascending, Origin origin)
    {
        sorted[(route, side)] = ascending;
        estimates[(route, side)] = Estimate.FromSorted(ascending, origin);
    }
}
