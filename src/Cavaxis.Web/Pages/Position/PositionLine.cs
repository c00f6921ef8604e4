namespace Cavaxis.Web.Pages.Position;

/// <summary>One line of the log of a cannula.</summary>
/// <param name="At">When.</param>
/// <param name="Sequence">Number of its entry.</param>
/// <param name="Who">Who wrote it down.</param>
/// <param name="Text">What was read or done.</param>
/// <param name="SeenBy">How it was seen.</param>
/// <param name="IsImaged">True where an image showed it.</param>
internal sealed record PositionLine(DateTimeOffset At, long Sequence, string Who, string Text, string SeenBy, bool IsImaged);
