using System.Globalization;
using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities;
using static Cavaxis.Arteries.Numbers.ArterialConstant;

namespace Cavaxis.Arteries.Limb;

/// <summary>Flow of a leg with and without distal perfusion, with the spread that the uncertain inputs give it, against its need.</summary>
public static class LegJudgement
{
    /// <summary>Distal perfusion cannula that is tried where none is in place.</summary>
    public const string UsualPerfusionCannula = "distal-7fr-10cm";

    private const double MlPerMinPerM3PerS = 6e7;

    /// <summary>Judges a leg.</summary>
    /// <param name="x">What it rests on.</param>
    /// <returns>The reading.</returns>
    public static LimbReading Of(LegInputs x)
    {
        ArgumentNullException.ThrowIfNull(x);
        bool cannulated = x.Return is { IsFemoral: true } r && r.SideLetter == (x.Side == BodySide.Right ? "R" : "L");
        Estimate need = Need(x.MassKg);
        PatientTree tree = x.WithDiameter(x.ArteryMm.Value);
        double friction = SteadyTree.UsualFriction;
        Cannula? inPlace = cannulated ? x.Return!.DistalPerfusion : null;
        double steady = Flow(x, tree, cannulated, friction, 1, inPlace).Leg;

        // The waves shift the mean a little; the steady tree gives the differences.
        double scale = steady > 1 ? x.WaveFlowMlPerMin / steady : 1;
        double sd = Spread(x, cannulated, friction, steady, inPlace) * scale;
        double low = Math.Max(0, x.WaveFlowMlPerMin - (Estimate.NormalQuantile95 * sd));
        Estimate flow = Estimate.WithInterval(x.WaveFlowMlPerMin, sd, low, x.WaveFlowMlPerMin + (Estimate.NormalQuantile95 * sd), Origin.Calculated);
        LimbSupply supply = flow.Low >= need.High ? LimbSupply.Supplied
            : flow.Value < need.Low || flow.High < need.Value ? LimbSupply.Starved : LimbSupply.Borderline;
        if (!cannulated)
        {
            return new LimbReading(x.Side, false, supply, flow, need, null, null, null, null, x.ArteryMm, Sentence(x, false, supply, flow, need, null, null, null));
        }

        double without = Flow(x, tree, true, friction, 1, null).Leg * (inPlace is null ? scale : 1);
        Cannula tried = inPlace ?? DeviceCatalogue.BuiltIn.Cannula(UsualPerfusionCannula);
        (double with, double side) = Flow(x, tree, true, friction, 1, tried);
        double ratio = x.Return!.Cannula.OuterDiameterMm / x.ArteryMm.Value;
        return new LimbReading(
            x.Side, true, supply, flow, need, without, inPlace is null ? with : x.WaveFlowMlPerMin, side, ratio, x.ArteryMm,
            Sentence(x, true, supply, flow, need, without, inPlace is null ? with : null, ratio));
    }

    /// <summary>Need of a leg: least and ample flow of the adult by body mass to the power 0.75.</summary>
    /// <param name="massKg">Body mass, kg.</param>
    /// <returns>Need, mL/min.</returns>
    public static Estimate Need(double massKg)
    {
        ArterialNumber n = ArterialNumbers.Of(LegNeedMlPerMin);
        double scale = Math.Pow(Math.Min(massKg, ParameterTable.ReferenceMassKg) / ParameterTable.ReferenceMassKg, 0.75);
        return Estimate.WithInterval(
            n.Value * scale, (n.High - n.Low) * scale / (2 * Estimate.NormalQuantile95), n.Low * scale, n.High * scale, Origin.Estimated);
    }

    private static (double Leg, double Side) Flow(LegInputs x, PatientTree tree, bool cannulated, double friction, double endFactor, Cannula? perfusion)
    {
        CannulaPlacement? placement = cannulated ? CannulaPlacement.Of(tree, x.Return!) : null;
        Tree.ArterialTerritory leg = x.Side == BodySide.Right ? Tree.ArterialTerritory.LegRight : Tree.ArterialTerritory.LegLeft;
        SteadyTree steady = new(tree, placement, friction, i => tree.Segments[i].Table.Territory == leg ? endFactor : 1);
        double main = x.PumpFlowLPerMin;
        double side = perfusion is null || placement is null ? 0 : PerfusionFlow.LPerMin(steady, tree, placement, x.Return!, perfusion, main, x.RootPa);
        double toM3 = UnitFactors.CubicMetresPerSecondPerLPerMin;
        (double[] q, _) = placement is null
            ? steady.Solve(x.RootPa)
            : steady.Solve(x.RootPa, (placement.TipSegment, (main - side) * toM3), (placement.PerfusionSegment, side * toM3));
        return (LegFlow.Of(tree, q, x.Side) * MlPerMinPerM3PerS, side * 1000);
    }

    /// <summary>Root of the sum of squares of what one standard deviation of each uncertain input does.</summary>
    private static double Spread(LegInputs x, bool cannulated, double friction, double value, Cannula? perfusion)
    {
        double sum = 0;
        void Add(double other) => sum += (other - value) * (other - value);
        PatientTree tree = x.WithDiameter(x.ArteryMm.Value);
        Add(Flow(x, tree, cannulated, friction, 1 + ArterialNumbers.Value(ResistanceVaried), perfusion).Leg);
        if (cannulated)
        {
            Add(Flow(x, x.WithDiameter(Math.Max(1, x.ArteryMm.Value - x.ArteryMm.Sd)), true, friction, 1, perfusion).Leg);
            ArterialNumber ring = ArterialNumbers.Of(AnnulusFriction);
            Add(Flow(x, tree, true, ring.High, 1, perfusion).Leg);
        }

        return Math.Sqrt(sum);
    }

    private static string Sentence(
        LegInputs x, bool cannulated, LimbSupply supply, Estimate flow, Estimate need, double? without, double? with, double? ratio)
    {
        string leg = x.Side == BodySide.Right ? "right leg" : "left leg";
        string finding = supply switch
        {
            LimbSupply.Supplied => "is supplied",
            LimbSupply.Borderline => "is on the border of want",
            _ => "is starved",
        };
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"The {leg} {finding}: {flow.Value:F0} mL/min ({flow.Low:F0} to {flow.High:F0}) for a need of {need.Low:F0} to {need.High:F0} mL/min.");
        if (!cannulated)
        {
            return text;
        }

        text += string.Create(
            CultureInfo.InvariantCulture, $" The cannula's outer diameter is {100 * ratio:F0} % of the artery's inner diameter ({x.ArteryMm.Value:F1} mm, {Known(x.ArteryMm)}).");
        return with is double gained
            ? text + string.Create(CultureInfo.InvariantCulture, $" With a distal perfusion cannula of 7 Fr: {gained:F0} mL/min.")
            : text + string.Create(CultureInfo.InvariantCulture, $" Without the distal perfusion cannula: {without:F0} mL/min.");
    }

    private static string Known(Estimate diameter) => diameter.Origin == Origin.Measured ? "measured" : "not measured, from a population";
}
