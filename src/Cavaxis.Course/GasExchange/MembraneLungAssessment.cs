using System.Globalization;
using Cavaxis.Blood.CarbonDioxide;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Course.Criteria;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Quantities;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// What a membrane lung does, from blood on both sides, pressures and gas: transfer by Fick, drop, shunt and dead space as for a lung, and each
/// published sign of failure. Equations in <c>docs/models/gas-exchange-measured.md</c>.
/// </summary>
public static class MembraneLungAssessment
{
    // Sweep gas is metered dry at 20 °C; transfer is counted at 0 °C.
    private const double StandardPerMetered = 273.15 / 293.15;

    private static readonly BloodConstants K = BloodConstants.Default;

    /// <summary>Assesses the readings.</summary>
    /// <param name="now">Readings now.</param>
    /// <param name="reference">Readings when the lung was new; null when there are none, and a rise then cannot be told.</param>
    /// <param name="lung">The lung of the catalogue; null when it is not known.</param>
    /// <returns>What can be told.</returns>
    public static MembraneLungPerformance Of(MembraneLungReadings now, MembraneLungReadings? reference = null, MembraneLung? lung = null)
    {
        ArgumentNullException.ThrowIfNull(now);
        Estimate? rise = DropRise(now, reference, lung);
        Estimate? bound = BoundOverExpected(now, lung);
        IReadOnlyList<CriterionJudgement> signs = Signs(now, rise, bound);
        return new MembraneLungPerformance
        {
            OxygenTransferMlPerMin = OxygenTransfer(now),
            CarbonDioxideTransferMlPerMin = CarbonDioxideTransfer(now),
            CarbonDioxideExhaustedMlPerMin = Exhausted(now),
            DropMmHg = Drop(now),
            DropPerFlow = DropPerFlow(now),
            DropRisePercent = rise,
            ShuntPercent = Shunt(now),
            DeadSpacePercent = now.ExhaustPco2MmHg is Estimate gas && now.PostPco2MmHg is Estimate blood
                ? Propagation.Through([gas, blood], static x => x[1] > 0 ? 100 * (1 - (x[0] / x[1])) : double.NaN)
                : null,
            BoundOverExpected = bound,
            FailureSigns = signs,
            Words = Words(signs),
        };
    }

    private static Estimate? OxygenTransfer(MembraneLungReadings now) => Gases(now) is Estimate[] gases
        ? Propagation.Through(gases, static x => 10 * x[0] * (Content(x[1], x[3], x[5]) - Content(x[1], x[2], x[4])))
        : null;

    private static Estimate? Shunt(MembraneLungReadings now) =>
        Gases(now) is Estimate[] gases && now.SweepOxygenFraction is Estimate oxygen && now.PostPco2MmHg is Estimate carbonDioxide
            ? Propagation.Through([.. gases, oxygen, carbonDioxide], static x =>
            {
                double gas = (Math.Clamp(x[6], 0.21, 1) * MembraneLung.DryPressureMmHg) - x[7];
                double ideal = OxygenContent.FromPo2(x[1], Math.Max(0, gas), BloodConditions.Standard, K);
                double possible = ideal - Content(x[1], x[2], x[4]);
                return possible > 0 ? 100 * (ideal - Content(x[1], x[3], x[5])) / possible : double.NaN;
            })
            : null;

    private static Estimate? CarbonDioxideTransfer(MembraneLungReadings now) =>
        now.HaemoglobinGPerDl is Estimate haemoglobin && now.PrePco2MmHg is Estimate pre && now.PostPco2MmHg is Estimate post
            && now.BaseExcessMmolPerL is Estimate excess && now.Pre is OxygenSample before && now.Post is OxygenSample after
            ? Propagation.Through(
                [now.FlowLPerMin, haemoglobin, pre, post, excess, before.SaturationPercent, after.SaturationPercent],
                static x => 10 * x[0] * (CarbonDioxide(x[2], x[4], x[1], x[5]) - CarbonDioxide(x[3], x[4], x[1], x[6])))
            : null;

    private static Estimate? Exhausted(MembraneLungReadings now) => now.SweepLPerMin is Estimate sweep && now.ExhaustPco2MmHg is Estimate gas
        ? Propagation.Through([sweep, gas], static x => 1000 * StandardPerMetered * x[0] * x[1] / MembraneLung.DryPressureMmHg)
        : null;

    private static Estimate? Drop(MembraneLungReadings now) => now.PrePressureMmHg is Estimate pre && now.PostPressureMmHg is Estimate post
        ? Propagation.Through([pre, post], static x => x[0] - x[1])
        : null;

    private static Estimate? DropPerFlow(MembraneLungReadings now) => Drop(now) is Estimate drop
        ? Propagation.Through([drop, now.FlowLPerMin], static x => x[1] > 0 ? x[0] / x[1] : double.NaN)
        : null;

    private static Estimate? DropRise(MembraneLungReadings now, MembraneLungReadings? reference, MembraneLung? lung)
    {
        if (DropPerFlow(now) is not Estimate after || reference is null || DropPerFlow(reference) is not Estimate before || !(before.Value > 0))
        {
            return null;
        }

        // Drop over flow rises with flow in a lung that is well; the curve of the catalogue takes that off.
        double byFlow = lung is null ? 1 : Curve(lung, now.FlowLPerMin.Value) / Curve(lung, reference.FlowLPerMin.Value);
        return Propagation.Through([after, before], x => x[1] > 0 ? 100 * ((x[0] / (x[1] * byFlow)) - 1) : double.NaN);
    }

    private static double Curve(MembraneLung lung, double flow) => lung.LinearMmHgPerLPerMin + (lung.QuadraticMmHgPerLPerMin2 * flow);

    private static Estimate? BoundOverExpected(MembraneLungReadings now, MembraneLung? lung) =>
        lung is not null && now.HaemoglobinGPerDl is Estimate haemoglobin && now.Pre is OxygenSample pre && now.Post is OxygenSample post && now.SweepOxygenFraction is Estimate oxygen
            ? Propagation.Through([now.FlowLPerMin, haemoglobin, pre.SaturationPercent, post.SaturationPercent, oxygen], x =>
            {
                double flow = Math.Clamp(x[0], 0.05, 15);
                double inlet = Math.Clamp(x[2], 0, 100) / 100;
                double expected = lung.Oxygen(flow, Math.Clamp(x[1], 3, 25), inlet, Math.Clamp(x[4], 0.21, 1)).OutletSaturation - inlet;
                return expected > 0.01 ? (Math.Clamp(x[3], 0, 100) - (100 * inlet)) / (100 * expected) : double.NaN;
            })
            : null;

    private static List<CriterionJudgement> Signs(MembraneLungReadings now, Estimate? rise, Estimate? bound)
    {
        bool pure = now.SweepOxygenFraction?.Value >= MembraneFailureSigns.LowestOxygenFraction;
        bool washed = now.SweepLPerMin?.Value >= MembraneFailureSigns.LowestSweepLPerMin;
        Estimate? fall = now.PrePco2MmHg is Estimate before && now.PostPco2MmHg is Estimate after ? Propagation.Through([before, after], static x => x[0] - x[1]) : null;
        return
        [
            Under(MembraneFailureSigns.PostPo2, now.Post?.Po2MmHg, pure, "the sweep gas is not known to be pure oxygen"),
            Under(MembraneFailureSigns.PostPco2, now.PostPco2MmHg, washed, "the sweep is not known to be 10 L/min or more"),
            Under(MembraneFailureSigns.Pco2Fall, fall, washed, "the sweep is not known to be 10 L/min or more"),
            MembraneFailureSigns.DropRise.Judge(rise),
            MembraneFailureSigns.BoundOverExpected.Judge(bound),
            MembraneFailureSigns.DDimer.Judge(now.DDimerMgPerL),
            MembraneFailureSigns.Fibrinogen.Judge(now.FibrinogenGPerL),
            MembraneFailureSigns.Platelets.Judge(now.PlateletsGPerL),
            MembraneFailureSigns.FreeHaemoglobin.Judge(now.FreeHaemoglobinMgPerL),
            MembraneFailureSigns.LactateDehydrogenase.Judge(now.LactateDehydrogenaseUPerL),
        ];
    }

    private static CriterionJudgement Under(Criterion criterion, Estimate? observed, bool holds, string why) => observed is null || holds
        ? criterion.Judge(observed)
        : new CriterionJudgement(criterion, CriterionVerdict.NotMeasured, observed, false, string.Create(CultureInfo.InvariantCulture, $"{criterion.Words}: cannot be judged, because {why}; read was {observed.Value:0.#} {criterion.Unit}."));

    private static string Words(IReadOnlyList<CriterionJudgement> signs)
    {
        string[] there = [.. signs.Where(static s => s.Verdict == CriterionVerdict.Met).Select(static s => s.Criterion.Words)];
        int missing = signs.Count(static s => s.Verdict == CriterionVerdict.NotMeasured);
        string unknown = string.Create(CultureInfo.InvariantCulture, $" {missing} of {signs.Count} signs were not measured or cannot be judged.");
        return missing == signs.Count ? string.Create(CultureInfo.InvariantCulture, $"None of {signs.Count} signs of a failing membrane lung was measured or can be judged.")
            : there.Length == 0
            ? "None of the measured signs of a failing membrane lung is there." + unknown
            : string.Create(CultureInfo.InvariantCulture, $"{there.Length} of {signs.Count} signs of a failing membrane lung: {string.Join("; ", there)}.{unknown}");
    }

    /// <summary>Flow, haemoglobin, saturations before and after, tensions before and after; null when one is missing.</summary>
    private static Estimate[]? Gases(MembraneLungReadings now) =>
        now.HaemoglobinGPerDl is Estimate haemoglobin && now.Pre is OxygenSample pre && now.Post is OxygenSample post
            && pre.TensionMmHg(BloodConditions.Standard) is Estimate before && post.TensionMmHg(BloodConditions.Standard) is Estimate after
            ? [now.FlowLPerMin, haemoglobin, pre.SaturationPercent, post.SaturationPercent, before, after]
            : null;

    private static double Content(double haemoglobin, double saturationPercent, double tension) =>
        (K.HuefnerMlPerG * haemoglobin * Math.Min(1, saturationPercent / 100)) + (K.OxygenSolubilityMlPerDlPerMmHg * Math.Max(0, tension));

    /// <summary>CO₂ content at a tension under a base excess; not a number where no pH from 6.5 to 7.7 fits.</summary>
    private static double CarbonDioxide(double pco2, double excess, double haemoglobin, double saturationPercent)
    {
        double saturation = Math.Clamp(saturationPercent / 100, 0, 1);
        if (!(pco2 > 1 && haemoglobin is > 1 and < 25 && Math.Abs(excess) < 30)
            || BaseExcess.Pco2At(6.55, excess, haemoglobin, saturation) < pco2 || BaseExcess.Pco2At(7.69, excess, haemoglobin, saturation) > pco2)
        {
            return double.NaN;
        }

        return CarbonDioxideContent.MlPerDl(pco2, BaseExcess.PhAt(pco2, excess, haemoglobin, saturation), haemoglobin, saturation, 37);
    }
}
