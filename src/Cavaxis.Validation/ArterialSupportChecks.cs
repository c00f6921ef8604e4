using System.Collections.Immutable;
using Cavaxis.Anatomy.Body;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Running;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Arteries.Tree;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Presets;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Validation;

/// <summary>The arterial tree at rest and under support against published flows, wave speeds, simulations and series.</summary>
public sealed class ArterialSupportChecks : IReferenceChecks
{
    private static readonly Source Simulation = new(
        "Computational study of extracorporeal support and the failing heart, ASAIO J 2017, abstract: support of 90 % or more puts the watershed in the arch, more native flow into the thoracic aorta",
        Certainty.SeenSecondHand);

    private static readonly Source Coronary = new(
        "Prisco et al. 2021, J Cardiovasc Transl Res, 10.1007/s12265-021-10110-2: heart muscle hypoxic before the brain as native output recovers", Certainty.Seen);

    private static readonly Source RightHand = new("Right radial artery or right hand is watched first, general guidance", Certainty.FromMemory);
    private static readonly Source LegFlows = new("Holland et al. 1998, Ultrasound Med Biol 24:1079, 40 people; bound of two SD from its standard errors", Certainty.Seen);
    private static readonly Source SideFlow = new("Foltan et al. 2019, Perfusion: another perfusion cannula, 15 and 17 Fr arterial cannula", Certainty.Seen);
    private static readonly Source LeastFlow = new("Guideline target of 100 mL/min, quoted by a maker of flow meters", Certainty.SeenSecondHand);

    private const string Order = "The source gives the order; the bound of three points is this project's.";

    private static readonly BodyHabitus Adult = new(40, Sex.Male, 175, 75);

    private static CirculationParameters Shock => CirculationPresets.Of("cardiogenic-shock").Parameters()
        .With((SweepLPerMin, 2.5), (ShuntFraction, 0.5), (InspiredOxygenFraction, 0.6));

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Rest(), .. Mixing(), .. Legs()];

    private static IEnumerable<ValidationRow> Rest()
    {
        ArterialSupportResult rest = ArterialSupport.Run(new ArterialSupportRequest(CirculationParameters.Adult, Adult, null, 0));
        double Flow(string name) => 1000 * rest.Arteries.First(a => a.Name == name).MeanFlowLPerMin;
        double Organ(ArterialOrgan organ) => 1000 * rest.Organs[(int)organ].FlowLPerMin;
        double brain = Organ(ArterialOrgan.BrainRight) + Organ(ArterialOrgan.BrainLeft);
        double kidneys = Organ(ArterialOrgan.KidneyRight) + Organ(ArterialOrgan.KidneyLeft);
        double Highest(string name) => rest.Arteries.First(a => a.Name == name).PressureMmHg.Highest;
        yield return Row("Tree at rest: flow of a common femoral artery", LegFlows, 284, Flow("femoral_R_I"), "mL/min", Tolerance.Absolute, 266);
        yield return Row(
            "Tree at rest: flow of a superficial femoral artery", LegFlows, 152, Flow("femoral_R_II"), "mL/min", Tolerance.Absolute, 126,
            "The table gives the thigh wholly to the profunda.");
        yield return Row("Tree at rest: flow of a popliteal artery", LegFlows, 72, Flow("popliteal_R_I"), "mL/min", Tolerance.Absolute, 63);
        yield return Row(
            "Tree at rest: flow of the brain, two SD", new("Zarrinkoob et al. 2015, J Cereb Blood Flow Metab 35:648, 94 people", Certainty.Seen), 717, brain, "mL/min",
            Tolerance.Absolute, 246);
        yield return Row(
            "Tree at rest: kidneys' share of output", new("Williams and Leggett 1989, quoted in a report of a national academy", Certainty.SeenSecondHand), 0.19,
            kidneys / (1000 * rest.Heart.NativeOutputLPerMin), "1", Tolerance.Absolute, 0.04);
        yield return Row(
            "Tree at rest: pulse wave velocity from root to groin, by the wave speeds along the way, one SD",
            new("Diaz et al. 2014, Int J Hypertens 653239: 780 people, mean age 40", Certainty.Seen), 6.84, WaveSpeed(rest), "m/s", Tolerance.Absolute, 1.65);
        yield return Row(
            "Tree at rest: systolic pressure of the arm over that of the aorta", new("Central and brachial pressure of 180 people of 70 years, 2025: 132.3 and 123.8 mmHg", Certainty.Seen),
            8.5, Highest("brachial_R") - Highest("aortic_root"), "mmHg", Tolerance.Absolute, 8.5);
    }

    private static IEnumerable<ValidationRow> Mixing()
    {
        ArterialReturn entry = Return("return-arterial-17fr-16cm");
        ArterialSupportRequest shock = new(Shock, Adult, entry, 2.5);
        ImmutableArray<ArterialSweepPoint> points = ArterialSupport.Sweep(shock, [2.5, 3.5], [1, 1.4, 2]);
        ArterialSweepPoint At(double flow, double strength) =>
            points.First(p => Math.Abs(p.PumpFlowLPerMin - flow) < 0.3 && p.ContractilityFactor == strength);
        static double Support(ArterialSweepPoint p) => 100 * p.PumpFlowLPerMin / (p.PumpFlowLPerMin + p.NativeOutputLPerMin);
        double archEnd = ArchEndCm();
        ArterialSweepPoint most = At(3.5, 1), middle = At(2.5, 1), half = At(2.5, 1.4);
        yield return Row(
            FormattableString.Invariant($"Femoral return, {Support(most):F0} % of all flow: half place before the end of the arch"), Simulation, archEnd, most.HalfCm.Mean, "cm", Tolerance.AtMost, 0);
        yield return Row(
            FormattableString.Invariant($"Femoral return, {Support(half):F0} % of all flow: half place beyond the arch"), Simulation, archEnd, half.HalfCm.Mean, "cm", Tolerance.AtLeast, 0);
        ValidationRow published = Row(
            FormattableString.Invariant($"Femoral return, {Support(middle):F0} % of all flow: half place beyond the arch"), Simulation, archEnd, middle.HalfCm.Mean, "cm",
            Tolerance.AtLeast, 0, "Published for 75 %. Here heart, head and arms take 35 % of all flow, so that the arch still holds the front.");
        yield return published with { KnownMiss = true };
        yield return Row(
            "Stronger ventricle at 2.5 L/min: half place moves away from the valve", Simulation, 0, At(2.5, 2).HalfCm.Mean - At(2.5, 1).HalfCm.Mean, "cm", Tolerance.AtLeast, 0);
        yield return Row(
            "Pump flow from 2.5 to 3.5 L/min: half place moves towards the valve", Simulation, 0, At(3.5, 1.4).HalfCm.Mean - At(2.5, 1.4).HalfCm.Mean, "cm", Tolerance.AtMost, 0);
        yield return Row(
            "Six points: highest saturation of heart muscle over that of the right brain", Coronary, 0, points.Max(static p => p.HeartPercent - p.BrainRightPercent), "%", Tolerance.Absolute, 0.1,
            "Never better supplied, and worse where the front lies in the arch.");
        yield return Row(
            "The same: largest shortfall of heart muscle against the right brain", Coronary, 3, points.Max(static p => p.BrainRightPercent - p.HeartPercent), "%", Tolerance.AtLeast, 0, Order);
        yield return Row("Six points: right hand over left hand", RightHand, 0, points.Max(static p => p.HandRightPercent - p.HandLeftPercent), "%", Tolerance.AtMost, 0);
        yield return Row("The same: largest shortfall of the right hand against the left", RightHand, 3, points.Max(static p => p.HandLeftPercent - p.HandRightPercent), "%", Tolerance.AtLeast, 0, Order);
        yield return Row("The same: largest shortfall of the right brain against the left", RightHand, 3, points.Max(static p => p.BrainLeftPercent - p.BrainRightPercent), "%", Tolerance.AtLeast, 0, Order);
    }

    private static IEnumerable<ValidationRow> Legs()
    {
        MeasuredDiameter narrow = new(AccessArtery.FemoralRight, Estimate.Normal(5.8, 0.3, Origin.Measured));
        ArterialSupportRequest tight = new(Shock, Adult, Return("return-arterial-17fr-16cm"), 4) { Measured = [narrow], WithIntervals = false };
        LimbReading leg = ArterialSupport.Run(tight).Limbs[0];
        yield return Row("17 Fr in an artery of 5.8 mm: flow of the leg", LeastFlow, 100, leg.FlowMlPerMin.Value, "mL/min", Tolerance.AtMost, 0);
        yield return Row("The same with a distal perfusion cannula of 7 Fr", LeastFlow, 100, leg.WithPerfusionMlPerMin ?? 0, "mL/min", Tolerance.AtLeast, 0);
        foreach ((string cannula, double flow, double expected) in ((string, double, double)[])[("15fr", 5, 480), ("17fr", 5, 390), ("15fr", 1.5, 160), ("17fr", 1.5, 140)])
        {
            yield return Row(
                FormattableString.Invariant($"Distal perfusion cannula of 7 Fr beside a return of {cannula} at {flow} L/min: its flow"), SideFlow, expected,
                SideCannulaFlow(cannula, flow), "mL/min", Tolerance.Relative, 0.45, "Other cannula and side line; the same size is asked for, not the same number.");
        }
    }

    private static double SideCannulaFlow(string size, double flow)
    {
        ArterialReturn entry = Return("return-arterial-" + size + "-16cm");
        BedState beds = new(
            80 * UnitFactors.PascalsPerMmHg, 9 * UnitFactors.PascalsPerMmHg, 4.5 * UnitFactors.CubicMetresPerSecondPerLPerMin, 1.5e-6 / UnitFactors.PascalsPerMmHg,
            0.045, 0.31, 0.26, 0.21, 3.2e-3, 1055);
        PatientTree tree = TreeScaling.Of(ArterialTable.BuiltIn, Adult, [], beds);
        CannulaPlacement placement = CannulaPlacement.Of(tree, entry);
        SteadyTree steady = new(tree, placement, SteadyTree.UsualFriction);
        return 1000 * PerfusionFlow.LPerMin(
            steady, tree, placement, entry, DeviceCatalogue.BuiltIn.Cannula("distal-7fr-10cm"), flow, beds.MeanPressurePa);
    }

    private static ArterialReturn Return(string cannula) => new(AccessArtery.FemoralRight, DeviceCatalogue.BuiltIn.Cannula(cannula));

    private static double ArchEndCm() =>
        ArterialTable.BuiltIn.Segments.Where(static s => s.Name.StartsWith("aortic_", StringComparison.Ordinal) || s.Name == "ascending_aorta").Sum(static s => s.LengthMm) / 10;

    /// <summary>Length over time from root to groin, each segment passed at the speed of small waves at its mean pressure.</summary>
    private static double WaveSpeed(ArterialSupportResult rest)
    {
        ArterialTable table = ArterialTable.BuiltIn;
        double length = 0;
        double time = 0;

        BedState beds = new(
            rest.Heart.MeanPressureMmHg * UnitFactors.PascalsPerMmHg, 0, rest.Heart.NativeOutputLPerMin * UnitFactors.CubicMetresPerSecondPerLPerMin,
            1.5e-6 / UnitFactors.PascalsPerMmHg, 0.045, 0.31, 0.26, 0.21, 3.2e-3, 1055);
        PatientTree tree = TreeScaling.Of(table, Adult, [], beds);
        for (int i = table.IndexOf("femoral_R_I"); i >= 0; i = Before(table, i))
        {
            PatientSegment s = tree.Segments[i];
            double radius = 0.5 * (s.ProximalRadiusM + s.DistalRadiusM);
            double stiffness = TubeLaw.Stiffness(radius, s.WallM * radius / s.ProximalRadiusM, s.ModulusPa);
            double root = (Math.Sqrt(Math.PI) * radius) + ((beds.MeanPressurePa - tree.ReferencePressurePa) / stiffness);
            length += s.LengthM;
            time += s.LengthM / TubeLaw.WaveSpeed(stiffness, root * root, beds.DensityKgPerM3);
        }

        return length / time;
    }

    private static int Before(ArterialTable table, int segment)
    {
        for (int i = 0; i < table.Segments.Length; i++)
        {
            if (table.Segments[i].To == table.Segments[segment].From)
            {
                return i;
            }
        }

        return -1;
    }

    private static ValidationRow Row(
        string check, Source source, double expected, double got, string unit, Tolerance tolerance, double bound, string note = "") =>
        new("Arteries", check, source, expected, got, unit, tolerance, bound, note);
}
