using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Cavaxis.Reports.Pdf;

/// <summary>Fonts of the report, embedded as subsets with Unicode text that can be searched and copied.</summary>
internal static class PdfFonts
{
    private static readonly XPdfFontOptions Options = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);

    /// <summary>A font.</summary>
    /// <param name="sizePt">Its size, points.</param>
    /// <param name="bold">Bold face.</param>
    /// <returns>The font.</returns>
    internal static XFont Of(double sizePt, bool bold) =>
        new(DejaVuFonts.Family, sizePt, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, Options);
}
