namespace Cavaxis.Arteries.Network;

/// <summary>One end of a segment.</summary>
/// <param name="Segment">Index of the segment.</param>
/// <param name="IsDistal">True for its distal end.</param>
public readonly record struct SegmentEnd(int Segment, bool IsDistal);
