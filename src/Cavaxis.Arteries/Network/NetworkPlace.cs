namespace Cavaxis.Arteries.Network;

/// <summary>A place in a network.</summary>
/// <param name="Segment">Name of the segment.</param>
/// <param name="Distance">Distance from its proximal end, m.</param>
public sealed record NetworkPlace(string Segment, double Distance);
