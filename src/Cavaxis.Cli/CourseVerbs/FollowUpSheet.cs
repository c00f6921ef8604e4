using Cavaxis.Course.FollowUp;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>What a course asks for after support.</summary>
internal static class FollowUpSheet
{
    /// <summary>Of a course.</summary>
    /// <param name="course">The course.</param>
    /// <param name="now">The moment.</param>
    /// <returns>What is shown.</returns>
    public static Shown Of(PatientCourse course, DateTimeOffset now)
    {
        IReadOnlyList<DueItem> due = FollowUpPlan.Of(course);
        List<string> lines = due.Count == 0 ? ["No follow-up is due: no cannula was taken out and nothing was planned."] : [];
        foreach (DueItem item in due)
        {
            lines.Add(Line(item, now));
            if (item.Item is FollowUpItem scheduled)
            {
                lines.Add($"     why: {scheduled.Rationale} Sources: {string.Join("; ", scheduled.Sources.Select(static s => s.ToString()))}. Time: {scheduled.TimingSource}.");
            }
        }

        lines.Add(CourseWords.Caution);
        return new Shown(new { caution = CourseWords.Caution, items = due.Select(i => new { state = i.At(now), item = i }).ToArray() }, lines);
    }

    /// <summary>One line of an item.</summary>
    /// <param name="item">The item.</param>
    /// <param name="now">The moment.</param>
    /// <returns>The line.</returns>
    public static string Line(DueItem item, DateTimeOffset now)
    {
        DueState state = item.At(now);
        string mark = state == DueState.Overdue ? "OVERDUE" : PlainWords.FromName(state.ToString());
        string done = item.Done is { } found ? $"; {CourseWords.Time(found.OccurredAt)}, {found.Who}: {TimelineWords.Of(found.Event)}" : string.Empty;
        return $"{mark}: {item.What} ({item.Key}), {CourseWords.Time(item.From)} to {CourseWords.Time(item.By)}{(item.IsPlanned ? ", as planned" : string.Empty)}{done}";
    }
}
