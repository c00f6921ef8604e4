namespace Cavaxis.Planning.Running;

/// <summary>What a change would do in the arterial tree of the best fit.</summary>
/// <param name="MeetingBefore">Where blood of heart and pump meet before it, as part of a sentence.</param>
/// <param name="MeetingAfter">The same after it.</param>
/// <param name="Rows">Numbers before and after.</param>
/// <param name="Reason">Why there are none; empty where there are.</param>
public sealed record ArterialChange(string MeetingBefore, string MeetingAfter, IReadOnlyList<ArterialChangeRow> Rows, string Reason);
