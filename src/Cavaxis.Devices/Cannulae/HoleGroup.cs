namespace Cavaxis.Devices.Cannulae;

/// <summary>A group of equal holes, close enough together to be one port.</summary>
/// <param name="Name">Short name for tables and drawings, such as "tip holes" or "return port".</param>
/// <param name="FromTipMm">Distance of the middle of the group from the tip, along the cannula.</param>
/// <param name="SpanMm">Length of the group along the cannula; zero for an end hole.</param>
/// <param name="Count">Number of holes, at least one.</param>
/// <param name="DiameterMm">Diameter of one hole; for a slot, the diameter of equal area.</param>
/// <param name="Facing">Where the holes look.</param>
public sealed record HoleGroup(string Name, double FromTipMm, double SpanMm, int Count, double DiameterMm, HoleFacing Facing);
