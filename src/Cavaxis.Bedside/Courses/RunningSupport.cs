using Cavaxis.Course.GasExchange;
using Cavaxis.Course.Patients;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Courses;

/// <summary>What support does now, by the readings of a course.</summary>
/// <param name="IsVenoVenous">True where all blood returns to veins; only then is recirculation of the pump flow spoken of.</param>
/// <param name="Recirculation">Recirculation; null on support that returns to an artery.</param>
/// <param name="EffectiveFlowLPerMin">Pump flow that is not drained again at once; null where it cannot be told.</param>
/// <param name="FlowOverOutput">Effective flow over the output of the heart; null where it cannot be told.</param>
/// <param name="Budget">Oxygen delivered and consumed; null where it cannot be told.</param>
/// <param name="Lung">What the membrane lung does; null where no pump flow was read.</param>
/// <param name="NotTold">What cannot be told, each with the reason.</param>
/// <param name="Used">The readings that went in.</param>
public sealed record RunningSupport(
    bool IsVenoVenous,
    RunningRecirculation? Recirculation,
    Estimate? EffectiveFlowLPerMin,
    Estimate? FlowOverOutput,
    OxygenBudget? Budget,
    MembraneLungPerformance? Lung,
    IReadOnlyList<string> NotTold,
    IReadOnlyList<ReadingAtHand> Used)
{
    /// <summary>How long after its start a membrane lung counts as new, so that a rise of its drop can be held against it. An assumption of this project.</summary>
    public static readonly TimeSpan NewFor = TimeSpan.FromHours(6);

    private const double LowestFlow = 0.05;
    private const double LowestHaemoglobin = 3;

    /// <summary>What can be told.</summary>
    /// <param name="run">The run of support.</param>
    /// <param name="course">The course.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="lung">The membrane lung of the catalogue; null where it is not known.</param>
    /// <returns>What can be told, and what cannot.</returns>
    public static RunningSupport Of(SupportRun run, PatientCourse course, ReadingsAtHand readings, MembraneLung? lung)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(readings);
        List<string> notTold = [];
        bool venous = run.Configuration is RunningConfiguration.VvTwoSite or RunningConfiguration.VvDualLumen;
        RunningRecirculation? recirculation = venous ? RunningRecirculation.Of(readings) : null;
        Estimate? flow = readings[PumpFlowLPerMin];
        Estimate? output = readings[CardiacOutputLPerMin];
        Estimate? effective = venous && flow is not null && recirculation!.Best is RecirculationMeasurement best ? EffectiveSupport.FlowLPerMin(flow, best) : null;
        if (venous && effective is null)
        {
            notTold.Add($"effective flow: {(flow is null ? "the pump flow was not read with the other readings" : "recirculation cannot be told")}");
        }

        MembraneLungReadings? now = flow is { Value: >= LowestFlow } ? ReadingsOf(readings, flow) : null;
        MembraneLungPerformance? performance = now is null ? null : MembraneLungAssessment.Of(now, New(run, course, readings), lung);
        if (now is null)
        {
            notTold.Add("the membrane lung: the pump flow was not read with the other readings, or no blood flows");
        }

        OxygenBudget? budget = BudgetOf(venous, flow, output, performance, readings, notTold);
        return new RunningSupport(
            venous, recirculation, effective, effective is not null && output is { Value: > 0 } ? EffectiveSupport.FlowOverOutput(effective, output) : null, budget, performance, notTold,
            readings.Read(
                PumpFlowLPerMin, SweepLPerMin, SweepOxygenFraction, CardiacOutputLPerMin, HaemoglobinGPerDl, RightArmSaturationPercent, RightArmPo2MmHg, PreMembraneSaturationPercent, PostMembraneSaturationPercent,
                PreMembranePo2MmHg, PostMembranePo2MmHg, PreMembranePco2MmHg, PostMembranePco2MmHg, PreMembranePressureMmHg, PostMembranePressureMmHg, CentralVenousSaturationPercent, PulmonaryArterySaturationPercent));
    }

    private static OxygenBudget? BudgetOf(bool venous, Estimate? flow, Estimate? output, MembraneLungPerformance? lung, ReadingsAtHand readings, List<string> notTold)
    {
        string[] missing = [.. readings.Missing(CardiacOutputLPerMin, RightArmSaturationPercent, HaemoglobinGPerDl)];
        if (missing.Length > 0)
        {
            notTold.Add($"delivery over consumption: not read with the other readings: {string.Join(", ", missing)}");
            return null;
        }

        // On veno-arterial support the pump feeds the body beside the heart; both streams are counted, as equally saturated.
        Estimate systemic = venous ? output! : flow is null ? output! : Estimate.Normal(output!.Value + flow.Value, double.Hypot(output.Sd, flow.Sd), Origin.Calculated);
        if (lung?.OxygenTransferMlPerMin is not Estimate transfer || systemic.Value < LowestFlow || readings[HaemoglobinGPerDl]!.Value < LowestHaemoglobin)
        {
            notTold.Add("delivery over consumption: the oxygen that the membrane lung gives cannot be told from what was read before and after it");
            return null;
        }

        return OxygenBudgets.Of(new OxygenBudgetReadings(
            readings[HaemoglobinGPerDl]!, systemic, new OxygenSample(readings[RightArmSaturationPercent]!, readings[RightArmPo2MmHg]), transfer));
    }

    private static MembraneLungReadings? New(SupportRun run, PatientCourse course, ReadingsAtHand readings)
    {
        DateTimeOffset began = run.Changes.LastOrDefault(static c => c.Event.MembraneLung is not null)?.OccurredAt ?? run.Started.OccurredAt;
        return readings.At > began + NewFor && ReadingsAtHand.Of(course, began + NewFor) is ReadingsAtHand first && first.At >= began && first[PumpFlowLPerMin] is { Value: >= LowestFlow } flow
            ? ReadingsOf(first, flow)
            : null;
    }

    private static MembraneLungReadings ReadingsOf(ReadingsAtHand readings, Estimate flow) => new(flow)
    {
        HaemoglobinGPerDl = readings[HaemoglobinGPerDl] is { Value: >= LowestHaemoglobin } haemoglobin ? haemoglobin : null,
        Pre = readings[PreMembraneSaturationPercent] is Estimate pre ? new OxygenSample(pre, readings[PreMembranePo2MmHg]) : null,
        Post = readings[PostMembraneSaturationPercent] is Estimate post ? new OxygenSample(post, readings[PostMembranePo2MmHg]) : null,
        PrePco2MmHg = readings[PreMembranePco2MmHg],
        PostPco2MmHg = readings[PostMembranePco2MmHg],
        PrePressureMmHg = readings[PreMembranePressureMmHg],
        PostPressureMmHg = readings[PostMembranePressureMmHg],
        SweepLPerMin = readings[SweepLPerMin],
        SweepOxygenFraction = readings[SweepOxygenFraction],
        DDimerMgPerL = readings[DDimerMgPerL],
        FibrinogenGPerL = readings[FibrinogenGPerL],
        PlateletsGPerL = readings[PlateletsGPerL],
        FreeHaemoglobinMgPerL = readings[FreeHaemoglobinMgPerL],
        LactateDehydrogenaseUPerL = readings[LactateDehydrogenaseUPerL],
    };
}
