namespace Cavaxis.Course.Positions;

/// <summary>Something about the position of a cannula that whoever reads the record should know. It is no order.</summary>
/// <param name="Text">In words, with numbers and units.</param>
/// <param name="Rule">The rule behind it; null where it follows from the record alone.</param>
public sealed record PositionWarning(string Text, PositionRule? Rule);
