using Cavaxis.Bedside.Courses;
using Cavaxis.Course.GasExchange;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Readouts;

/// <summary>Recirculation, effective flow, oxygen of the membrane lung and delivery over consumption as a sheet tells them: a number with its interval, or that it cannot be told and why.</summary>
public static class CourseGases
{
    private const string NotTold = "cannot be told";

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

        if (ReadingsAtHand.Of(course, now) is not ReadingsAtHand readings)
        {
            return [new GasAnswer("gas exchange", FormattableString.Invariant($"{NotTold}: nothing of the circuit was read in the last {ReadingsAtHand.Stale.TotalHours:0} h"), false)];
        }

        RunningSupport support = RunningSupport.Of(run, course, readings, null);
        string when = $"readings about {SheetWords.Short(readings.At)}";
        List<GasAnswer> answers = [];
        if (support.Recirculation is RunningRecirculation recirculation)
        {
            answers.Add(Recirculation(recirculation, when));
            answers.Add(Told("effective flow", support.EffectiveFlowLPerMin is Estimate flow ? $"{SheetWords.Value(flow, "L/min", 1)}, {when}" : null, support));
        }

        answers.Add(Told("oxygen given by the membrane lung", support.Lung?.OxygenTransferMlPerMin is Estimate oxygen ? $"{SheetWords.Value(oxygen, "mL/min", 0)}, {when}" : null, support));
        answers.Add(Budget(support, when));
        return answers;
    }

    private static GasAnswer Recirculation(RunningRecirculation recirculation, string when)
    {
        const string What = "recirculation";
        if (recirculation.Best is { Percent: Estimate percent } best)
        {
            string caution = best.Cautions.Count > 0 ? $". {best.Cautions[0]}" : string.Empty;
            return new GasAnswer(What, $"{SheetWords.Value(percent, "%", 0)}, by {Name(best.Method)}, {when}{caution}", true);
        }

        return new GasAnswer(What, recirculation.ByContent?.Words.TrimEnd('.') ?? $"{NotTold}: not read with the other readings: {string.Join(", ", recirculation.Missing)}", false);
    }

    private static GasAnswer Budget(RunningSupport support, string when)
    {
        const string What = "DO2:VO2";
        if (support.Budget is not OxygenBudget budget)
        {
            return Told(What, null, support);
        }

        return budget.DeliveryOverConsumption is Estimate ratio
            ? new GasAnswer(What, $"{(budget.NativeLungKnown ? string.Empty : "at most ")}{SheetWords.Value(ratio, string.Empty, 1)}, {when}{(budget.NativeLungKnown ? string.Empty : "; the uptake of the patient's own lung is not known")}{(support.IsVenoVenous ? string.Empty : "; blood of heart and pump is taken as equally saturated")}", true)
            : new GasAnswer(What, budget.Words.TrimEnd('.'), false);
    }

    private static GasAnswer Told(string what, string? words, RunningSupport support)
    {
        if (words is not null)
        {
            return new GasAnswer(what, words, true);
        }

        // The service gives its reasons as "what: why"; each answer takes the one that is its own.
        string subject = what == "DO2:VO2" ? "delivery over consumption: " : $"{what}: ";
        string? why = support.NotTold.FirstOrDefault(n => n.StartsWith(subject, StringComparison.Ordinal))?[subject.Length..];
        return new GasAnswer(what, why is null ? $"{NotTold} from what was read with the other readings" : $"{NotTold}: {why}", false);
    }

    private static string Name(RecirculationMethod method) => method switch
    {
        RecirculationMethod.Content => "oxygen content",
        RecirculationMethod.Saturation => "saturation",
        _ => "dilution",
    };
}
