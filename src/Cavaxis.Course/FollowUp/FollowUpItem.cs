using Cavaxis.Quantities;

namespace Cavaxis.Course.FollowUp;

/// <summary>An examination after support that the schedule asks for.</summary>
/// <param name="Key">Short stable name.</param>
/// <param name="What">What is to be done.</param>
/// <param name="Applies">Which cannulae call for it.</param>
/// <param name="From">Not before, counted from removal.</param>
/// <param name="By">Not after, counted from removal.</param>
/// <param name="Rationale">Why, with numbers where they were found.</param>
/// <param name="Sources">Where the reason comes from.</param>
/// <param name="TimingSource">Where the time comes from.</param>
public sealed record FollowUpItem(
    string Key, string What, FollowUpNeed Applies, TimeSpan From, TimeSpan By, string Rationale, IReadOnlyList<Source> Sources, Source TimingSource);
