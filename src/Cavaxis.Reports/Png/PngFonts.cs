using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Pdf;
using SkiaSharp;

namespace Cavaxis.Reports.Png;

/// <summary>The two faces that a picture is lettered in: the font files of the PDF.</summary>
internal sealed class PngFonts : IDisposable
{
    private readonly SKTypeface regular;
    private readonly SKTypeface bold;

    private PngFonts(SKTypeface regular, SKTypeface bold) => (this.regular, this.bold) = (regular, bold);

    /// <summary>The faces from the machine's usual font folders.</summary>
    /// <returns>The faces.</returns>
    /// <exception cref="InputFaultException">The fonts are not on this machine; the fault names the package that holds them.</exception>
    public static PngFonts Installed()
    {
        DejaVuFonts files = DejaVuFonts.Installed();
        return new PngFonts(Face(files, isBold: false), Face(files, isBold: true));
    }

    /// <summary>A font whose size is counted in mm of paper.</summary>
    /// <param name="sizePt">Size, points.</param>
    /// <param name="isBold">Bold face.</param>
    /// <returns>The font; the caller disposes of it.</returns>
    public SKFont Of(double sizePt, bool isBold) => new(isBold ? bold : regular, (float)(sizePt * TextMetrics.MmPerPoint))
    {
        Edging = SKFontEdging.Antialias,
        Hinting = SKFontHinting.None,
        Subpixel = true,
        LinearMetrics = true,
    };

    /// <inheritdoc/>
    public void Dispose()
    {
        regular.Dispose();
        bold.Dispose();
    }

    private static SKTypeface Face(DejaVuFonts files, bool isBold)
    {
        using SKData data = SKData.CreateCopy(files.Face(isBold));
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException("A font file could not be read as a font.");
    }
}
