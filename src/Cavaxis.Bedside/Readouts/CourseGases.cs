using Cavaxis.Course.GasExchange;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Readouts;

/// <summary>
/// Recirculation, effective flow, transfer of the membrane lung and delivery over consumption from the last readings of a course. Samples that belong together
/// must have been read within an hour of each other and none more than six hours ago: assumptions of this project. What does not fit is told as not told.
/// </summary>
public static class CourseGases
{
    /// <summary>How old a reading may be that still stands for now.</summary>
    public static readonly TimeSpan Stale = TimeSpan.FromHours(6);

    /// <summary>How far apart readings may be that count as drawn together.</summary>
    public static readonly TimeSpan Together = TimeSpan.FromHours(1);

    /// <summary>What can be told.</summary>
    /// <param name="course">The course.</param>
    /// <param name="now">The moment.</param>
    /// <returns>Answers; empty where no support runs.</returns>
    public static IReadOnlyList<GasAnswer> Of(PatientCourse course, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(course);
        if (course.Running is not SupportRun run)
        {
            return [];
        }

        bool venous = run.Configuration is RunningConfiguration.VvTwoSite or RunningConfiguration.VvDualLumen;
        List<GasAnswer> answers = [];
        if (venous)
        {
            (GasAnswer recirculation, RecirculationMeasurement? measured, DateTimeOffset? drawn) = Recirculation(course, now);
            answers.Add(recirculation);
            answers.Add(Effective(course, now, measured, drawn));
        }

        (GasAnswer transfer, Estimate? oxygen, DateTimeOffset? at) = Transfer(course, now);
        answers.Add(transfer);
        answers.Add(Budget(course, now, venous, oxygen, at));
        return answers;
    }

    private static (GasAnswer Answer, RecirculationMeasurement? Measured, DateTimeOffset? At) Recirculation(PatientCourse course, DateTimeOffset now)
    {
        const string What = "recirculation";
        Drawn drawn = Drawn.Of(course, now, PreMembraneSaturationPercent, PostMembraneSaturationPercent, CentralVenousSaturationPercent);
        if (drawn.Trouble is string trouble)
        {
            return course.Series.GetValueOrDefault(RecirculationPercent)?.AsOf(now, Stale) is SeriesPoint dilution
                ? Dilution(dilution)
                : (new GasAnswer(What, $"cannot be told: {trouble}", false), null, null);
        }

        Estimate? haemoglobin = Known(course, HaemoglobinGPerDl, now);
        RecirculationReadings readings = new(
            new OxygenSample(drawn[PreMembraneSaturationPercent], drawn.Beside(PreMembranePo2MmHg)),
            new OxygenSample(drawn[PostMembraneSaturationPercent], drawn.Beside(PostMembranePo2MmHg)),
            new VenousSample(new OxygenSample(drawn[CentralVenousSaturationPercent]), VenousSite.UpperCava),
            haemoglobin is { Value: >= 3 } ? haemoglobin : null);
        RecirculationMeasurement content = BloodGasRecirculation.ByContent(readings);
        RecirculationMeasurement told = content.IsTold ? content : BloodGasRecirculation.BySaturation(readings);
        string words = told.Percent is Estimate percent
            ? $"{SheetWords.Value(percent, "%", 0)}, by {(told.Method == RecirculationMethod.Content ? "oxygen content" : "saturation")}, samples of {SheetWords.Short(drawn.At)}"
            : content.Words.TrimEnd('.');
        return (new GasAnswer(What, $"{words}. {told.Cautions[0]}", told.IsTold), told, drawn.At);
    }

    private static (GasAnswer Answer, RecirculationMeasurement? Measured, DateTimeOffset? At) Dilution(SeriesPoint point)
    {
        Estimate percent = Estimate.Normal(point.Value, point.Sd, Origin.Measured);
        string words = $"{SheetWords.Value(percent, "%", 0)}, by dilution, {SheetWords.Short(point.At)}";
        return (new GasAnswer("recirculation", words, true), new RecirculationMeasurement(RecirculationMethod.Dilution, percent, words, []), point.At);
    }

    private static GasAnswer Effective(PatientCourse course, DateTimeOffset now, RecirculationMeasurement? recirculation, DateTimeOffset? drawn)
    {
        const string What = "effective flow";
        if (recirculation?.IsTold != true)
        {
            return new GasAnswer(What, "cannot be told without recirculation", false);
        }

        SeriesPoint? flow = Nearest(course, PumpFlowLPerMin, drawn!.Value, now);
        return flow is not null && EffectiveSupport.FlowLPerMin(Of(flow), recirculation) is Estimate effective
            ? new GasAnswer(What, $"{SheetWords.Value(effective, "L/min", 1)} of {SheetWords.Number(flow.Value)} L/min pump flow", true)
            : new GasAnswer(What, "cannot be told: no pump flow was read within an hour of the samples", false);
    }

    private static (GasAnswer Answer, Estimate? OxygenMlPerMin, DateTimeOffset? At) Transfer(PatientCourse course, DateTimeOffset now)
    {
        const string What = "oxygen given by the membrane lung";
        Drawn drawn = Drawn.Of(course, now, PreMembraneSaturationPercent, PostMembraneSaturationPercent, PostMembranePo2MmHg, PumpFlowLPerMin);
        if (drawn.Trouble is string trouble)
        {
            return (new GasAnswer(What, $"cannot be told: {trouble}", false), null, null);
        }

        if (Known(course, HaemoglobinGPerDl, now) is not { Value: >= 3 } haemoglobin || drawn[PumpFlowLPerMin].Value < 0.05)
        {
            return (new GasAnswer(What, "cannot be told: haemoglobin was not read in the last day, or no blood flows", false), null, null);
        }

        MembraneLungPerformance lung = MembraneLungAssessment.Of(new MembraneLungReadings(drawn[PumpFlowLPerMin])
        {
            HaemoglobinGPerDl = haemoglobin,
            Pre = new OxygenSample(drawn[PreMembraneSaturationPercent], drawn.Beside(PreMembranePo2MmHg)),
            Post = new OxygenSample(drawn[PostMembraneSaturationPercent], drawn[PostMembranePo2MmHg]),
        });
        return lung.OxygenTransferMlPerMin is Estimate oxygen
            ? (new GasAnswer(What, $"{SheetWords.Value(oxygen, "mL/min", 0)}, samples of {SheetWords.Short(drawn.At)}", true), oxygen, drawn.At)
            : (new GasAnswer(What, "cannot be told: the readings before and after it do not suffice", false), null, null);
    }

    private static GasAnswer Budget(PatientCourse course, DateTimeOffset now, bool venous, Estimate? oxygen, DateTimeOffset? drawn)
    {
        const string What = "DO2:VO2";
        if (oxygen is null)
        {
            return new GasAnswer(What, "cannot be told without the oxygen given by the membrane lung", false);
        }

        SeriesPoint? output = Nearest(course, CardiacOutputLPerMin, drawn!.Value, now);
        SeriesPoint? arm = Nearest(course, RightArmSaturationPercent, drawn.Value, now);
        SeriesPoint? flow = Nearest(course, PumpFlowLPerMin, drawn.Value, now);
        if (output is null || arm is null || flow is null || Known(course, HaemoglobinGPerDl, now) is not Estimate haemoglobin)
        {
            return new GasAnswer(What, "cannot be told: output of the heart or saturation of the right arm was not read within an hour of the samples", false);
        }

        Estimate systemic = venous ? Of(output) : Estimate.Normal(output.Value + flow.Value, double.Hypot(output.Sd, flow.Sd), Origin.Calculated);
        if (systemic.Value < 0.1)
        {
            return new GasAnswer(What, "cannot be told: no blood flows", false);
        }

        SeriesPoint? tension = Nearest(course, RightArmPo2MmHg, drawn.Value, now);
        OxygenBudget? budget = OxygenBudgets.Of(new OxygenBudgetReadings(haemoglobin, systemic, new OxygenSample(Of(arm), tension is null ? null : Of(tension)), oxygen));
        return budget?.DeliveryOverConsumption is Estimate ratio
            ? new GasAnswer(What, $"at most {SheetWords.Value(ratio, string.Empty, 1)}; the uptake of the patient's own lung is not known{(venous ? string.Empty : ", and blood of heart and pump is taken as equally saturated")}", true)
            : new GasAnswer(What, budget?.Words ?? "cannot be told: the readings give no delivery", false);
    }

    private static Estimate Of(SeriesPoint point) => Estimate.Normal(point.Value, point.Sd, Origin.Measured);

    // Haemoglobin changes slowly: the last of a day stands.
    private static Estimate? Known(PatientCourse course, ObservedQuantity quantity, DateTimeOffset now) =>
        course.Series.GetValueOrDefault(quantity)?.AsOf(now, TimeSpan.FromHours(24)) is SeriesPoint point ? Of(point) : null;

    private static SeriesPoint? Nearest(PatientCourse course, ObservedQuantity quantity, DateTimeOffset at, DateTimeOffset now) => course.Series.GetValueOrDefault(quantity)?.Points
        .Where(p => p.At <= now && (p.At - at).Duration() <= Together).MinBy(p => (p.At - at).Duration());
}
