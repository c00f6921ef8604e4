using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>A label beside the tree.</summary>
/// <param name="Lines">Words; the first line is the name.</param>
/// <param name="At">The place on the tree.</param>
/// <param name="OnLeft">Whether it stands at the left of the page.</param>
/// <param name="Tone">Colour of name and leader.</param>
internal sealed record TreeLabel(IReadOnlyList<string> Lines, Point At, bool OnLeft, Colour Tone);
