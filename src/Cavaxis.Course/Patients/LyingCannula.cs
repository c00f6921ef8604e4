using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>A cannula as the record tells that it lies, or lay.</summary>
/// <param name="Placed">How it was placed.</param>
/// <param name="DepthCm">Depth at the skin as last written down, cm; null where it never was.</param>
/// <param name="DepthAt">When that was.</param>
/// <param name="TurnDeg">Turn as last written down, degrees.</param>
/// <param name="Positions">Positions read since it was placed, oldest first.</param>
/// <param name="Moves">Moves since it was placed, oldest first.</param>
/// <param name="Removed">How it was taken out; null while it lies.</param>
public sealed record LyingCannula(
    Logged<CannulaPlaced> Placed,
    double? DepthCm,
    DateTimeOffset? DepthAt,
    double? TurnDeg,
    IReadOnlyList<Logged<PositionRead>> Positions,
    IReadOnlyList<Logged<CannulaMoved>> Moves,
    Logged<CannulaRemoved>? Removed)
{
    /// <summary>Its name in the record.</summary>
    public string Name => Placed.Event.Cannula;

    /// <summary>True while it lies.</summary>
    public bool IsIn => Removed is null;

    /// <summary>The last position that an image showed, not the mark at the skin alone; null where there is none.</summary>
    public Logged<PositionRead>? LastImaged => Positions.LastOrDefault(static p => p.Event.SeenBy != PositionSight.SkinMark);
}
