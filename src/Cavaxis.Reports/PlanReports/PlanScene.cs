using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using Cavaxis.Reports.AxisDrawings;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The scene of a plan: this patient's axis at its medians, with the plan's cannulae at their planned depth.</summary>
public sealed class PlanScene
{
    private const double EnoughInZone = 0.7;
    private const double RenalVeinMarginMm = 20;
    private readonly Dictionary<AxisDimension, Estimate> axis;

    private PlanScene(PlanningResult result) => axis = result.Axis.ToDictionary(value => value.Dimension, value => value.Value);

    /// <summary>The scene of one plan.</summary>
    /// <param name="result">The planning result, for the axis.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="catalogue">The catalogue, for hole groups.</param>
    /// <returns>The scene.</returns>
    public static AxisScene Of(PlanningResult result, CannulationPlan plan, DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(catalogue);
        PlanScene scene = new(result);
        PlacedCannula[] onAxis = [.. plan.Cannulae.Where(cannula => cannula.Fit is not null)];
        return scene.Anatomy() with
        {
            Title = $"Axis and cannulae: {plan.Name}",
            Description = string.Join(" ", onAxis.Select(Words)),
            Entries = [.. onAxis.Select(cannula => scene.Entry(cannula.Route, cannula.Side)).Distinct()],
            Cannulae = [.. onAxis.Select(cannula => scene.Cannula(cannula, catalogue))],
        };
    }

    /// <summary>The scene of support that runs: its venous cannulae at the depths that the case tells, in the same axis.</summary>
    /// <param name="result">The planning result, for the axis.</param>
    /// <param name="running">The support.</param>
    /// <param name="catalogue">The catalogue, for hole groups.</param>
    /// <returns>The scene; a cannula without depth, device or side is not drawn.</returns>
    public static AxisScene Of(PlanningResult result, RunningSection running, DeviceCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(running);
        ArgumentNullException.ThrowIfNull(catalogue);
        PlanScene scene = new(result);
        RunningCannula[] lying = [.. running.Cannulae.Where(c => c is { DepthCm: not null, Side: not null, Route: AccessRoute.Jugular or AccessRoute.FemoralVein } && catalogue.FindCannula(c.Device) is not null)];
        return scene.Anatomy() with
        {
            Title = "Axis and cannulae as they lie",
            Description = lying.Length == 0
                ? "The case does not tell how deep the cannulae lie."
                : string.Join(" ", lying.Select(c => FormattableString.Invariant($"{catalogue.Cannula(c.Device).OuterDiameterFrench:F0} Fr {PlainWords.Role(c.Role)} through the {PlainWords.Vessel(c.Route!.Value, c.Side!.Value)}, {c.DepthCm!.Value:F1} cm from the skin."))),
            Entries = [.. lying.Select(c => scene.Entry(c.Route!.Value, c.Side!.Value)).Distinct()],
            Cannulae = [.. lying.Select(c => scene.Lying(c, catalogue.Cannula(c.Device)))],
        };
    }

    private AxisScene Anatomy() => new()
    {
        Title = "Axis",
        Description = string.Empty,
        ZeroName = "SCAJ",
        Segments = Segments(),
        Landmarks = Landmarks(),
        Tricuspid = new TricuspidOpening(
            Value(AxisDimension.TricuspidFraction) * Icaj, Value(AxisDimension.TricuspidDiameter), Value(AxisDimension.TricuspidDistance)),
        Note = "Medians of this patient's sampled anatomies; bands hold nine tenths of them.",
    };

    private double Icaj => Value(AxisDimension.AtrialSpan);

    private double Value(AxisDimension dimension) => axis[dimension].Value;

    private List<AxisSegment> Segments()
    {
        double offset = -Value(AxisDimension.MouthOffset);
        double end = Icaj + Value(AxisDimension.IcajToRenalVein) + RenalVeinMarginMm;
        double confluence = Icaj + Value(AxisDimension.IcajToRenalVein) + Value(AxisDimension.RenalVeinToIliacConfluence);
        Spread cava = Spread.Of(axis[AxisDimension.IvcDiameter]);
        return
        [
            new AxisSegment(SegmentKind.SuperiorVenaCava, "SVC", -Value(AxisDimension.SvcLength), 0, Spread.Of(axis[AxisDimension.SvcDiameter])),
            new AxisSegment(SegmentKind.RightAtrium, "right atrium", 0, Icaj, cava, 0, offset),
            new AxisSegment(SegmentKind.InferiorVenaCava, "IVC", Icaj, Math.Max(end, confluence), cava, offset, offset),
        ];
    }

    private List<AxisLandmark> Landmarks()
    {
        Spread icaj = Spread.Of(axis[AxisDimension.AtrialSpan]);
        return
        [
            new AxisLandmark(LandmarkKind.Junction, "superior cavo-atrial junction (SCAJ)", Spread.Exact(0)),
            new AxisLandmark(LandmarkKind.Junction, "inferior cavo-atrial junction (ICAJ)", icaj),
            new AxisLandmark(LandmarkKind.TricuspidValve, "tricuspid annulus, middle", Tricuspid()),
            new AxisLandmark(LandmarkKind.HepaticVein, "right hepatic vein, upper edge", Below(AxisDimension.IcajToHepaticVein)),
            new AxisLandmark(LandmarkKind.RenalVeins, "renal veins", Below(AxisDimension.IcajToRenalVein)),
        ];
    }

    private Spread Tricuspid()
    {
        Estimate fraction = axis[AxisDimension.TricuspidFraction];
        return new Spread(fraction.Value * Icaj, fraction.Low * Icaj, fraction.High * Icaj);
    }

    /// <summary>Spread of a landmark below the inferior junction; both lengths vary, so their spreads add in squares.</summary>
    private Spread Below(AxisDimension dimension)
    {
        Estimate span = axis[AxisDimension.AtrialSpan];
        Estimate below = axis[dimension];
        double middle = span.Value + below.Value;
        return new Spread(
            middle,
            middle - double.Hypot(span.Value - span.Low, below.Value - below.Low),
            middle + double.Hypot(span.High - span.Value, below.High - below.Value));
    }

    private static EntrySite Site(AccessRoute route, BodySide side) => (route, side) switch
    {
        (AccessRoute.Jugular, BodySide.Right) => EntrySite.RightNeck,
        (AccessRoute.Jugular, BodySide.Left) => EntrySite.LeftNeck,
        (AccessRoute.FemoralVein, BodySide.Right) => EntrySite.RightGroin,
        (AccessRoute.FemoralVein, BodySide.Left) => EntrySite.LeftGroin,
        _ => throw new ArgumentException($"{route} does not reach the axis.", nameof(route)),
    };

    private SkinEntry Entry(AccessRoute route, BodySide side)
    {
        bool neck = route == AccessRoute.Jugular;
        bool left = side == BodySide.Left;
        Estimate way = axis[neck ? AxisDimension.RightNeckSkinToScaj : AxisDimension.RightGroinSkinToIcaj];
        double extra = left ? Value(neck ? AxisDimension.LeftNeckExtra : AxisDimension.LeftGroinExtra) : 0;
        Spread position = neck
            ? new Spread(-way.Value - extra, -way.High - extra, -way.Low - extra)
            : new Spread(Icaj + way.Value + extra, Icaj + way.Low + extra, Icaj + way.High + extra);
        return new SkinEntry(Site(route, side), $"skin, {PlainWords.Vessel(route, side)}", position);
    }

    private SceneCannula Cannula(PlacedCannula placed, DeviceCatalogue catalogue)
    {
        Cannula cannula = catalogue.Cannula(placed.DeviceId);
        CannulaFit fit = placed.Fit ?? throw new ArgumentException("The cannula has no fit.", nameof(placed));
        PortPosition tip = fit.Ports.FirstOrDefault(port => port.Port == "tip") ?? fit.Ports[0];
        double depth = fit.PlannedDepthCm.Value * 10;
        Spread At(double fromTip) => Inward(placed.Route, placed.Side, depth - fromTip);
        return new SceneCannula(
            FormattableString.Invariant($"{placed.OuterDiameterFrench:F0} Fr {PlainWords.Role(placed.Role)}"),
            Site(placed.Route, placed.Side),
            cannula.OuterDiameterMm,
            tip.Port == "tip" ? Spread.Of(tip.BelowScajMm) : At(0),
            [.. cannula.Lumens.SelectMany(lumen => Groups(lumen)).Select(group => Port(placed.Role, group.Group, group.Purpose, At(group.Group.FromTipMm), fit.Ports))],
            tip.Port == "tip" ? Zone(tip) : null);
    }

    private SceneCannula Lying(RunningCannula lying, Cannula cannula)
    {
        (AccessRoute route, BodySide side, double depth) = (lying.Route!.Value, lying.Side!.Value, lying.DepthCm!.Value * 10);
        return new SceneCannula(
            FormattableString.Invariant($"{cannula.OuterDiameterFrench:F0} Fr {PlainWords.Role(lying.Role)}"),
            Site(route, side),
            cannula.OuterDiameterMm,
            Inward(route, side, depth),
            [.. cannula.Lumens.SelectMany(lumen => Groups(lumen)).Select(group => Port(lying.Role, group.Group, group.Purpose, Inward(route, side, depth - group.Group.FromTipMm), []))]);
    }

    /// <summary>Place on the axis of what lies some way inside the skin, mm.</summary>
    private Spread Inward(AccessRoute route, BodySide side, double insideMm)
    {
        Spread skin = Entry(route, side).PositionMm;
        double shift = route == AccessRoute.Jugular ? insideMm : -insideMm;
        return new Spread(skin.Median + shift, skin.Low + shift, skin.High + shift);
    }

    /// <summary>Groups of one name are drawn as one port over their whole length.</summary>
    private static IEnumerable<(HoleGroup Group, LumenPurpose Purpose)> Groups(Lumen lumen) => lumen.HoleGroups
        .GroupBy(group => group.Name, StringComparer.Ordinal)
        .Select(same =>
        {
            double near = same.Min(group => group.FromTipMm - (group.SpanMm / 2));
            double far = same.Max(group => group.FromTipMm + (group.SpanMm / 2));
            HoleGroup widest = same.MaxBy(group => group.SpanMm)!;
            return (widest with { FromTipMm = (near + far) / 2, SpanMm = far - near }, lumen.Purpose);
        });

    private static ScenePort Port(CannulaRole role, HoleGroup group, LumenPurpose purpose, Spread position, IReadOnlyList<PortPosition> rules)
    {
        PortPosition? rule = rules.FirstOrDefault(port => port.Port == group.Name);
        return new ScenePort(group.Name, purpose, position, group.SpanMm, Facing(role, group), rule is null ? null : Zone(rule));
    }

    private static PortZone? Zone(PortPosition rule) => rule.ZoneFromMm.Value > rule.ZoneToMm.Value
        ? null
        : new PortZone(rule.ZoneFromMm.Value, rule.ZoneToMm.Value, rule.ProbabilityInZone >= EnoughInZone, rule.ProbabilityInZone);

    private static PortFacing Facing(CannulaRole role, HoleGroup group) => group.Facing switch
    {
        HoleFacing.End => PortFacing.End,
        HoleFacing.OneSide => role == CannulaRole.DualLumen ? PortFacing.TowardTricuspid : PortFacing.Unknown,
        _ => PortFacing.AllRound,
    };

    private static string Words(PlacedCannula cannula) => FormattableString.Invariant(
        $"{cannula.OuterDiameterFrench:F0} Fr {PlainWords.Role(cannula.Role)} through the {PlainWords.Vessel(cannula.Route, cannula.Side)}, {cannula.Fit!.PlannedDepthCm.Value:F1} cm from the skin; all its ports can be brought into their zones in {cannula.Fit.ProbabilityWithImaging * 100:F0} % of anatomies.");
}
