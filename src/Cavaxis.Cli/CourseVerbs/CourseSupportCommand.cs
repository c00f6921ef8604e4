using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.GasExchange;
using Cavaxis.Course.Patients;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course support</c>: effective flow, oxygen delivered and consumed, and the membrane lung, from the last readings.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseSupportCommand(CommandOutput output, SecretReader secrets) : CourseCommand<OnePatientSettings>(output, secrets)
{
    private protected override Shown Show(CourseReading reading, OnePatientSettings settings, DateTimeOffset now)
    {
        PatientCourse course = reading.Course;
        RunningSupport? support = course.Running is SupportRun run && ReadingsAtHand.Of(course, now) is ReadingsAtHand readings ? RunningSupport.Of(run, course, readings, Lung(run)) : null;
        List<string> lines = support is null
            ? [course.Running is null ? "No support runs." : "Nothing can be told: nothing of the circuit was read in the last 6 h."]
            : [.. Flow(support), .. Budget(support), .. support.Lung is MembraneLungPerformance lung ? Membrane(lung) : [], .. support.NotTold.Select(static n => $"Cannot be told, {n}."), .. support.Used.Select(static r => $"  used: {CourseWords.Of(r)}")];
        lines.Add(CourseWords.Caution);
        return new Shown(new { caution = CourseWords.Caution, support }, lines);
    }

    private static Devices.MembraneLungs.MembraneLung? Lung(SupportRun run) =>
        (run.Changes.LastOrDefault(static c => c.Event.MembraneLung is not null)?.Event.MembraneLung ?? run.Started.Event.MembraneLung) is string id ? DeviceCatalogue.BuiltIn.FindMembraneLung(id) : null;

    private static IEnumerable<string> Flow(RunningSupport support)
    {
        if (!support.IsVenoVenous)
        {
            yield return "The blood returns to an artery: the pump flow reaches the body, and recirculation is not spoken of.";
        }

        if (support.EffectiveFlowLPerMin is Estimate effective)
        {
            yield return $"Effective flow {CourseWords.Number(effective, "L/min")}; {support.Recirculation!.Best!.Words}";
        }

        if (support.FlowOverOutput is Estimate ratio)
        {
            yield return $"Effective flow over output of the heart {CourseWords.Number(ratio, "1")}.";
        }
    }

    private static IEnumerable<string> Budget(RunningSupport support) => support.Budget is not OxygenBudget budget ? [] :
    [
        budget.Words,
        $"     delivered {CourseWords.Number(budget.DeliveryMlPerMin, "mL/min", "0")}; consumed {(budget.NativeLungKnown ? string.Empty : "at least ")}{CourseWords.Number(budget.ConsumptionMlPerMin, "mL/min", "0")}",
        $"     sources: {string.Join("; ", OxygenBudgets.Sources.Select(static s => s.ToString()))}",
        .. support.IsVenoVenous ? Array.Empty<string>() : ["     Blood of heart and pump is taken as equally saturated."],
    ];

    private static IEnumerable<string> Membrane(MembraneLungPerformance lung)
    {
        yield return $"Membrane lung: {lung.Words}";
        foreach ((string words, Estimate? number, string unit) in new[]
        {
            ("oxygen given", lung.OxygenTransferMlPerMin, "mL/min"), ("carbon dioxide taken (by blood)", lung.CarbonDioxideTransferMlPerMin, "mL/min"), ("pressure drop", lung.DropMmHg, "mmHg"),
            ("pressure drop over flow", lung.DropPerFlow, "mmHg/(L/min)"), ("rise of the drop since it was new", lung.DropRisePercent, "%"), ("shunt", lung.ShuntPercent, "%"),
            ("oxygen bound over what the lung of the catalogue would bind", lung.BoundOverExpected, "1"),
        })
        {
            yield return $"     {words}: {(number is null ? "cannot be told from what was read" : CourseWords.Number(number, unit, unit is "mL/min" ? "0" : "0.##"))}";
        }

        foreach (Course.Criteria.CriterionJudgement sign in lung.FailureSigns.Where(static s => s.Observed is not null))
        {
            yield return $"     sign of failure, {CourseWords.Of(sign)}";
        }
    }
}
