using System.Globalization;
using System.Text;
using Cavaxis.Devices.Bench;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Circuit;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Reference rows of whole cannulae: manifolds, M-numbers, bench curves, and blood against water.</summary>
public sealed class DeviceCannulaChecks : IReferenceChecks
{
    private static readonly Fluid Blood = new(1060, 3e-3);
    private static readonly Source Montoya = new("Montoya et al. 1991, ASAIO Trans 37:M60, M-number formula in a secondary page", Certainty.SeenSecondHand);
    private static readonly Source Broman = new("Broman et al. 2019, Perfusion (part I), blood against water charts of 14 return cannulae, abstract", Certainty.Seen);
    private static readonly Source SideHoles = new("Simulation of inflow cannulae with 0 to 12 side holes of 120 mm2 in all beside an end hole of 36.3 mm2, abstract", Certainty.Seen);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows() => [.. Manifolds(), .. MNumbers(), .. BenchCurves(), .. BloodAgainstWater()];

    private static IEnumerable<ValidationRow> Manifolds()
    {
        // V' = k (2 (s0/rho + V^2))^(1/2) with suction s = s0 + rho V^2 gives V ~ sinh(2^(1/2) k x): no friction, sharp holes.
        Source theory = new("Frictionless porous tube with combining flow: V proportional to sinh(x), from momentum and orifice equations", Certainty.ClosedForm);
        foreach (double openness in new[] { 0.3, 1.0, 2.0 })
        {
            const int Groups = 20;
            double hole = Math.Sqrt(openness / 0.62 / Groups / 8) * 10;
            HoleGroup[] groups = [.. Enumerable.Range(0, Groups).Select(i => new HoleGroup("row", 19.5 - i, 1, 8, hole, HoleFacing.AllRound))];
            Lumen lumen = new(LumenPurpose.Drainage, [TubeSegment.Round(20, 10)], groups);
            IReadOnlyList<double> shares = LumenHydraulics.At(lumen, 1e-4, new Fluid(1000, 2e-4)).HoleShares;
            double expected = 1 - (Math.Sinh(Math.Sqrt(2) * openness / 2) / Math.Sinh(Math.Sqrt(2) * openness));
            yield return Row(
                string.Create(CultureInfo.InvariantCulture, $"Share of the half of the holes nearest the pump, Cd sum(hole area)/bore {openness}"), theory, expected,
                shares.Take(Groups / 2).Sum(), "1", 0.02, "The program adds wall friction, which the theory leaves out.");
        }

        Source proximal = new("Wickramarachchi, Gregory and Khamooshi 2023, Phys Fluids, 10.1063/5.0137907: multi-stage cannula 52.8 % through the most proximal holes, abstract", Certainty.Seen);
        Source tip = new("Parker et al. 2024, Phys Fluids, 10.1063/5.0212546: single-stage cannula 33 % through the tip at 5 L/min, near a wall, abstract", Certainty.Seen);
        Source outlet = new("In silico study of a 19 Fr return cannula (2024), repository abstract: 94.0 to 95.8 % leaves at the tip", Certainty.Seen);
        yield return Row("Share of the stage nearest the pump, generic 25 Fr multi-stage at 4 L/min", proximal, 0.528, Share("drain-multi-25fr-55cm", LumenPurpose.Drainage, 4, 0), "1", 0.2, "Hole maps differ; the generic one is an assumption.");
        yield return Row("Share of the end hole, generic 21 Fr single-stage at 5 L/min", tip, 0.33, Share("drain-single-21fr-50cm", LumenPurpose.Drainage, 5, 1), "1", 0.35, "The source says that simple tubes underestimate the tip, since walls close side holes.");
        yield return Row("Share of the end hole, generic 19 Fr arterial return at 4 L/min", outlet, 0.949, Share("return-arterial-19fr-16cm", LumenPurpose.Return, 4, 1), "1", 0.02);
        Source trade = new("Most drained blood enters the holes nearest the pump (flow simulations)", Certainty.FromMemory);
        IReadOnlyList<double> stages = CannulaHydraulics.At(DeviceCatalogue.BuiltIn.Cannula("drain-multi-25fr-55cm"), LumenPurpose.Drainage, 4, Blood).HoleShares;
        yield return Bound("Share of the two stages nearest the pump of five, generic 25 Fr", trade, 0.5, stages[0] + stages[1], Tolerance.AtLeast);
        double open = SideHoleFlow(0);
        foreach ((int holes, double published) in new[] { (4, 2.52 / 2.57), (12, 2.41 / 2.57) })
        {
            double ratio = SideHoleFlow(holes) / open;
            string what = string.Create(CultureInfo.InvariantCulture, $"Flow with {holes} side holes over flow with the end hole alone");
            yield return Row(what, SideHoles, published, ratio, "1", 0.05, "Length (25 cm) and hole span (4 cm) are not in the abstract and are assumed.");
            yield return Bound($"{what}: side holes cost flow", SideHoles, 1, ratio, Tolerance.AtMost);
        }
    }

    private static double Share(string id, LumenPurpose purpose, double flow, int group) =>
        CannulaHydraulics.At(DeviceCatalogue.BuiltIn.Cannula(id), purpose, flow, Blood).HoleShares[group];

    private static double SideHoleFlow(int holes)
    {
        double bore = Math.Sqrt(4 * 36.3 / Math.PI);
        List<HoleGroup> groups = [new HoleGroup("end", 0, 0, 1, bore, HoleFacing.End)];
        if (holes > 0)
        {
            groups.Insert(0, new HoleGroup("side", 25, 40, holes, Math.Sqrt(4 * 120.0 / holes / Math.PI), HoleFacing.AllRound));
        }

        Cannula cannula = new(
            "c", "c", CannulaFamily.SingleStageDrainage, 24, 200, [new Lumen(LumenPurpose.Drainage, [TubeSegment.Round(250, bore)], groups)],
            null, null, null, SideHoles, new Dictionary<int, WaterCurve>());
        Fluid fluid = new(1060, 3.5e-3);
        double drop = CannulaHydraulics.At(cannula with { Lumens = [cannula.Lumens[0] with { HoleGroups = [groups[^1]] }] }, LumenPurpose.Drainage, 2.57, fluid).PressureDropPa;
        return CannulaHydraulics.FlowLPerMinFor(cannula, LumenPurpose.Drainage, drop, fluid);
    }

    private static IEnumerable<ValidationRow> MNumbers()
    {
        foreach ((double length, double bore, double flow) in new[] { (1, 10, 4), (18, 4.2, 3), (18, 4.867, 4.0), (50, 7.533, 5) })
        {
            // M = log10(7.161e6 mu^-0.25 dP Q^-1.75), mu in poise, dP in mmHg, Q in mL/min; M = log10(L / D^4.75), cm.
            double expected = length / Math.Pow(bore / 10, 4.75) * Math.Pow(0.03, 0.25) * Math.Pow(flow * 1000, 1.75) / 7.161e6;
            yield return Row(
                string.Create(CultureInfo.InvariantCulture, $"Friction of {length} cm of {bore} mm bore at {flow} L/min and 3 cP"), Montoya, expected,
                new Tubing(bore, length / 100).DropPa(flow, Blood) / UnitFactors.PascalsPerMmHg, "mmHg", 0.06,
                "The constant of the formula lies about 4 % below Blasius.");
        }

        Lumen plain = new(LumenPurpose.Return, [TubeSegment.Round(180, 4.867)], [new HoleGroup("return end", 0, 0, 1, 4.867, HoleFacing.End)]);
        double friction = 18 / Math.Pow(0.4867, 4.75) * Math.Pow(0.03, 0.25) * Math.Pow(4000, 1.75) / 7.161e6;
        yield return Bound(
            "Plain 17 Fr return tube with its exit loss against friction alone by the M-number", Montoya, friction,
            LumenHydraulics.At(plain, 4 / 60000.0, Blood).PressureDropPa / UnitFactors.PascalsPerMmHg, Tolerance.AtLeast, "mmHg");
    }

    private static IEnumerable<ValidationRow> BenchCurves()
    {
        Source direct = new("Smooth tube by Blasius with entrance and exit head, computed directly for blood; the program sees only its water curve", Certainty.ClosedForm);
        StringBuilder csv = new("# id: plain-tube\n# description: plain tube\n# family: arterialReturn\n# outer diameter [mm]: 5.8\n# insertable length [cm]: 15\n# inner diameter [mm]: 5\n# temperature [degC]: 20\nflow [L/min],pressure drop [kPa]\n");
        Fluid water = Water.At(20);
        for (double flow = 1; flow <= 6; flow += 0.5)
        {
            csv.Append(CultureInfo.InvariantCulture, $"{flow},{PlainTube(flow, water) / 1000:R}\n");
        }

        Cannula tube = BenchCurveFile.Parse(csv.ToString()).Cannula;
        foreach (double flow in new[] { 3.0, 4, 5, 6 })
        {
            LumenFlow blood = CannulaHydraulics.At(tube, LumenPurpose.Return, flow, Blood);
            yield return Row(string.Create(CultureInfo.InvariantCulture, $"Water curve carried over to blood of 3 mPa s at {flow} L/min"), direct, PlainTube(flow, Blood), blood.PressureDropPa, "Pa", 0.005);
        }

        Source similarity = new("Dynamic similarity: same Reynolds number, same Euler number; three times the viscosity and flow, nine times the pressure", Certainty.ClosedForm);
        double thin = CannulaHydraulics.At(tube, LumenPurpose.Return, 1.5, new Fluid(1060, 1e-3)).PressureDropPa;
        yield return Row("Pressure ratio of two liquids at the same Reynolds number", similarity, 9, CannulaHydraulics.At(tube, LumenPurpose.Return, 4.5, Blood).PressureDropPa / thin, "1", 1e-9);
    }

    private static double PlainTube(double litresPerMin, Fluid fluid)
    {
        double velocity = litresPerMin / 60000 / (Math.PI * 2.5e-3 * 2.5e-3);
        double reynolds = fluid.DensityKgPerM3 * velocity * 5e-3 / fluid.ViscosityPaS;
        return 0.5 * fluid.DensityKgPerM3 * velocity * velocity * (1.5 + (0.3164 * Math.Pow(reynolds, -0.25) * 200 / 5));
    }

    private static IEnumerable<ValidationRow> BloodAgainstWater()
    {
        Fluid water = Water.At(20);
        Source robak = new("Robak et al., in vivo suction pressures of venous cannulae, 15 patients, abstract: flow in water at 100 mmHg of suction", Certainty.Seen);
        foreach ((int french, double published) in new[] { (23, 6.6), (25, 7.9) })
        {
            Cannula drain = DeviceCatalogue.BuiltIn.Cannula(string.Create(CultureInfo.InvariantCulture, $"drain-multi-{french}fr-55cm"));
            yield return Row(
                string.Create(CultureInfo.InvariantCulture, $"Flow of water at 100 mmHg, generic {french} Fr multi-stage drainage"), robak, published,
                CannulaHydraulics.FlowLPerMinFor(drain, LumenPurpose.Drainage, 100 * UnitFactors.PascalsPerMmHg, water), "L/min", 0.15,
                "Bore and hole map of the cannulae measured are not known. In patients they drew 0.7 of it, more than viscosity explains.");
        }

        foreach ((int french, int drop, int low, int high) in new[] { (15, 200, 5, 15), (17, 200, 5, 15), (19, 100, 3, 21), (21, 100, 3, 21), (23, 100, 3, 21) })
        {
            string id = string.Create(CultureInfo.InvariantCulture, $"return-arterial-{french}fr-16cm");
            Cannula cannula = DeviceCatalogue.BuiltIn.Cannula(id);
            double pascals = drop * UnitFactors.PascalsPerMmHg;
            double lost = 100 * (1 - (CannulaHydraulics.FlowLPerMinFor(cannula, LumenPurpose.Return, pascals, Blood)
                / CannulaHydraulics.FlowLPerMinFor(cannula, LumenPurpose.Return, pascals, water)));
            string what = string.Create(CultureInfo.InvariantCulture, $"Flow lost in blood of 3 mPa s against water at {drop} mmHg, generic {french} Fr return");
            yield return Bound($"{what}, lower end", Broman, low, lost, Tolerance.AtLeast, "%");
            yield return Bound($"{what}, upper end", Broman, high, lost, Tolerance.AtMost, "%");
        }
    }

    private static ValidationRow Row(string check, Source source, double expected, double got, string unit, double relative, string note = "") =>
        new("Devices", check, source, expected, got, unit, Tolerance.Relative, relative, note);

    private static ValidationRow Bound(string check, Source source, double expected, double got, Tolerance tolerance, string unit = "1") =>
        new("Devices", check, source, expected, got, unit, tolerance, 0);
}
