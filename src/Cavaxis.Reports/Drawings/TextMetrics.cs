namespace Cavaxis.Reports.Drawings;

/// <summary>
/// How much room a text takes, without opening a font: advance widths of DejaVu Sans, the font of the PDF. The other
/// fonts that the SVG asks for are as wide or narrower, so that room kept by these numbers is enough there too.
/// </summary>
public static class TextMetrics
{
    /// <summary>Millimetres in a point: 25.4 / 72.</summary>
    public const double MmPerPoint = 25.4 / 72;

    /// <summary>Height above the base line that letters reach, as a part of the size.</summary>
    public const double Ascent = 0.76;

    /// <summary>Depth below the base line that letters reach, as a part of the size.</summary>
    public const double Descent = 0.24;

    private const double LatinSupplement = 0.79;
    private const double OtherScripts = 1.0;

    // Advance widths of U+0020 to U+007E in thousandths of the size, from the hmtx tables of DejaVu Sans 2.37.
    private static readonly short[] Regular =
    [
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636,
        636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863,
        748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635,
        615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636,
        337, 636, 838,
    ];

    private static readonly short[] Heavy =
    [
        348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696, 696, 696, 696, 696,
        696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683, 683, 821, 837, 372, 372, 775, 637, 995,
        837, 850, 733, 850, 770, 720, 682, 812, 774, 1103, 771, 724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716,
        678, 435, 716, 712, 343, 343, 665, 343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712,
        365, 712, 838,
    ];

    /// <summary>Width of one line of text, mm.</summary>
    /// <param name="text">The words.</param>
    /// <param name="sizePt">Size of the font, points.</param>
    /// <param name="bold">Bold face.</param>
    /// <returns>The width, mm.</returns>
    public static double WidthMm(string text, double sizePt, bool bold = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        short[] table = bold ? Heavy : Regular;
        double ems = 0;
        foreach (char c in text)
        {
            ems += c switch
            {
                >= ' ' and <= '~' => table[c - ' '] / 1000.0,
                >= '\u00A0' and <= '\u024F' => LatinSupplement,
                _ => OtherScripts,
            };
        }

        return ems * sizePt * MmPerPoint;
    }

    /// <summary>The upright box round a text on the paper, its turning included.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The box, mm.</returns>
    public static Box BoundsOf(Text text)
    {
        ArgumentNullException.ThrowIfNull(text);
        double width = WidthMm(text.Content, text.SizePt, text.Bold);
        double left = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => -width / 2, _ => -width };
        double up = -Ascent * text.SizePt * MmPerPoint;
        double down = Descent * text.SizePt * MmPerPoint;
        (double sin, double cos) = Math.SinCos(text.RotationDeg * Math.PI / 180);
        Point Turned(double x, double y) => text.At.Moved((x * cos) - (y * sin), (x * sin) + (y * cos));
        return Box.Around([Turned(left, up), Turned(left + width, up), Turned(left + width, down), Turned(left, down)]);
    }

    /// <summary>Breaks a text into lines that are not wider than given; a longer word is broken inside.</summary>
    /// <param name="text">The words.</param>
    /// <param name="widthMm">Greatest width, mm.</param>
    /// <param name="sizePt">Size of the font, points.</param>
    /// <param name="bold">Bold face.</param>
    /// <returns>At least one line.</returns>
    public static IReadOnlyList<string> Wrapped(string text, double widthMm, double sizePt, bool bold = false) =>
        LineBreaking.Wrapped(text, line => WidthMm(line, sizePt, bold) <= widthMm);
}
