using Cavaxis.Quantities.Faults;
using Cavaxis.Reports.Drawings;
using SkiaSharp;

namespace Cavaxis.Reports.Png;

/// <summary>Writes a drawing as a PNG picture: the same items as in the SVG, in the same places; the same drawing gives the same bytes.</summary>
public static class PngWriter
{
    /// <summary>Pixels in a millimetre of paper: 203 to the inch, at which the smallest text of a chart can be read.</summary>
    public const int PixelsPerMm = 8;

    /// <summary>Pixels along a length of paper.</summary>
    /// <param name="lengthMm">Length, mm.</param>
    /// <returns>Whole pixels, rounded up, so that nothing is cut off.</returns>
    public static int Pixels(double lengthMm) => (int)Math.Ceiling(lengthMm * PixelsPerMm - 1e-6);

    /// <summary>The drawing as a file.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <returns>The bytes of the file.</returns>
    /// <exception cref="InputFaultException">The fonts are not on this machine; the fault names the package that holds them.</exception>
    /// <exception cref="InvalidOperationException">The picture is too large to be painted.</exception>
    public static byte[] Write(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        using PngFonts fonts = PngFonts.Installed();
        SKImageInfo size = new(Pixels(drawing.WidthMm), Pixels(drawing.HeightMm), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using SKSurface surface = SKSurface.Create(size) ?? throw new InvalidOperationException("The picture is too large to be painted.");
        surface.Canvas.Clear(PngDrawingPainter.Tone(Colour.Paper, 1));
        surface.Canvas.Scale(PixelsPerMm);
        new PngDrawingPainter(surface.Canvas, fonts).Paint(drawing);
        using SKImage image = surface.Snapshot();
        using SKData file = image.Encode(SKEncodedImageFormat.Png, 100);
        return file.ToArray();
    }
}
