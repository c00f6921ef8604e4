using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>A label beside the axis with its band.</summary>
/// <param name="Lines">Words: the first line is the name.</param>
/// <param name="Position">Where it lies; the band spans its interval.</param>
/// <param name="At">The thing itself on the paper; a thin line joins it with its band.</param>
/// <param name="Tone">Colour of band and leader.</param>
/// <param name="Hatch">Pattern of the band.</param>
/// <param name="SpanMm">Length of the thing along the axis, mm; zero for a point.</param>
/// <param name="Zone">Where it is wanted; drawn as an open frame round the band.</param>
internal sealed record MarginEntry(
    IReadOnlyList<string> Lines, Spread Position, Point At, Colour Tone, Hatch Hatch, double SpanMm = 0, PortZone? Zone = null);
