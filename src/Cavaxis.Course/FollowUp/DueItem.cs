using Cavaxis.Course.Events;

namespace Cavaxis.Course.FollowUp;

/// <summary>An examination that is due for one patient, or was.</summary>
/// <param name="Key">Key of the item in the schedule, or the team's own name.</param>
/// <param name="What">What is to be done.</param>
/// <param name="From">Not before.</param>
/// <param name="By">Not after.</param>
/// <param name="Item">The item of the schedule; null where a team planned it on its own.</param>
/// <param name="IsPlanned">True where the team wrote the plan down; its times then hold.</param>
/// <param name="Done">The examination that answers it; null where none does.</param>
public sealed record DueItem(string Key, string What, DateTimeOffset From, DateTimeOffset By, FollowUpItem? Item, bool IsPlanned, Logged<FollowUpFound>? Done)
{
    /// <summary>How it stands at a moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <returns>The state.</returns>
    public DueState At(DateTimeOffset moment) => Done is not null
        ? Done.OccurredAt > By ? DueState.DoneLate : DueState.Done
        : moment > By ? DueState.Overdue : moment >= From ? DueState.Due : DueState.Ahead;
}
