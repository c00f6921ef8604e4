using Cavaxis.Reports.Drawings;
using PdfSharp.Drawing;

namespace Cavaxis.Reports.Pdf;

/// <summary>Colours of the report in the library's own type.</summary>
internal static class PdfTone
{
    /// <summary>Ground of headers and callouts.</summary>
    internal static Colour Panel { get; } = new(0xF3, 0xF6, 0xFA);

    /// <summary>A colour.</summary>
    internal static XColor Of(Colour colour) => XColor.FromArgb(colour.Red, colour.Green, colour.Blue);
}
