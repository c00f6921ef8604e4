namespace Cavaxis.Arteries.Support;

/// <summary>A piece of a segment that a cannula fills in part.</summary>
/// <param name="Segment">Index of the segment.</param>
/// <param name="FromM">Proximal end of the piece, from the beginning of the segment, m.</param>
/// <param name="LengthM">Length of the piece, m.</param>
/// <param name="AreaM2">Cross-section of the cannula, or as much of it as the lumen is taken to hold, m².</param>
public sealed record FilledPiece(int Segment, double FromM, double LengthM, double AreaM2);
