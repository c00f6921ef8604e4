using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Course.FollowUp;

/// <summary>What a patient's course asks for after support.</summary>
public static class FollowUpPlan
{
    /// <summary>The examinations, by when they are due. Times count from the removal of the last cannula that calls for an item.</summary>
    /// <param name="course">The course.</param>
    /// <returns>Items of the schedule that apply, and those that the team planned on its own.</returns>
    public static IReadOnlyList<DueItem> Of(PatientCourse course)
    {
        ArgumentNullException.ThrowIfNull(course);
        IReadOnlyList<Logged<FollowUpPlanned>> planned = course.All<FollowUpPlanned>();
        IReadOnlyList<Logged<FollowUpFound>> found = course.All<FollowUpFound>();
        List<DueItem> due = [];
        foreach (FollowUpItem item in FollowUpSchedule.Items)
        {
            if (Begins(course, item.Applies) is DateTimeOffset begins)
            {
                Logged<FollowUpPlanned>? own = planned.LastOrDefault(p => p.Event.Item == item.Key);
                DueItem one = own is null
                    ? new DueItem(item.Key, item.What, begins + item.From, begins + item.By, item, false, null)
                    : Planned(own, item);
                due.Add(one with { Done = Answer(found, item.Key, begins) });
            }
        }

        // Of two plans of one name the later holds.
        foreach (Logged<FollowUpPlanned> own in planned.GroupBy(static p => p.Event.Item, StringComparer.Ordinal).Select(static g => g.Last()))
        {
            if (due.All(d => d.Key != own.Event.Item))
            {
                due.Add(Planned(own, null) with { Done = Answer(found, own.Event.Item, own.OccurredAt) });
            }
        }

        return [.. due.OrderBy(static d => d.By).ThenBy(static d => d.Key, StringComparer.Ordinal)];
    }

    // The examination must name the item, and come after what called for it.
    private static Logged<FollowUpFound>? Answer(IReadOnlyList<Logged<FollowUpFound>> found, string key, DateTimeOffset begins) =>
        found.FirstOrDefault(f => f.Event.Item == key && f.OccurredAt >= begins);

    private static DueItem Planned(Logged<FollowUpPlanned> own, FollowUpItem? item) => new(
        own.Event.Item, own.Event.What, EventFault.Moment(own.Event.DueFrom)!.Value, EventFault.Moment(own.Event.DueBy)!.Value, item, true, null);

    private static DateTimeOffset? Begins(PatientCourse course, FollowUpNeed need)
    {
        IEnumerable<DateTimeOffset> moments = need switch
        {
            FollowUpNeed.VenousCannula => course.Cannulae.Where(static c => !IsArterial(c.Placed.Event.Role)).Select(static c => c.Removed?.OccurredAt).OfType<DateTimeOffset>(),
            FollowUpNeed.ArterialCannula => course.Cannulae.Where(static c => IsArterial(c.Placed.Event.Role)).Select(static c => c.Removed?.OccurredAt).OfType<DateTimeOffset>(),
            FollowUpNeed.ThrombusFound => course.All<FollowUpFound>()
                .Where(static f => f.Event.Item != "thrombus-review" && f.Event.Veins.Any(static v => v.Clot is ClotFinding.Partial or ClotFinding.Complete)).Select(static f => f.OccurredAt),
            _ => throw new ArgumentOutOfRangeException(nameof(need), need, "Not a need."),
        };
        return moments.Select(static m => (DateTimeOffset?)m).Max();
    }

    private static bool IsArterial(CannulaRole role) => role is CannulaRole.ArterialReturn or CannulaRole.DistalPerfusion;
}
