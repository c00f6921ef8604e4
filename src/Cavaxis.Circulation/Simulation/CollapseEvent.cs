namespace Cavaxis.Circulation.Simulation;

/// <summary>A cava that falls in, or opens again.</summary>
/// <param name="TimeS">When, s.</param>
/// <param name="Vein">Which.</param>
/// <param name="Collapses">True where it falls below the mark, false where it rises above it.</param>
public readonly record struct CollapseEvent(double TimeS, CollapsibleVein Vein, bool Collapses);
