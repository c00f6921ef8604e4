using Cavaxis.Arteries.Findings;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>How the blood of an artery is painted: colour by saturation, pattern by whose blood it is.</summary>
public static class BloodPaint
{
    /// <summary>Saturation at and below which the colour changes no more, %.</summary>
    public const double LowestPercent = 50;

    /// <summary>Share of a kind of blood from which it counts as that kind alone.</summary>
    public const double PureShare = 0.9;

    // Lightness falls with saturation, so that the order shows without colour vision and in grey print: dark means much oxygen.
    private static readonly Colour Poor = new(0x6F, 0xA8, 0xDC);
    private static readonly Colour Middle = new(0x8E, 0x6A, 0xA8);
    private static readonly Colour Rich = new(0xA8, 0x20, 0x12);

    /// <summary>Colour of a saturation.</summary>
    /// <param name="percent">Saturation, %.</param>
    /// <returns>From light blue at 50 % and below to dark red at 100 %.</returns>
    public static Colour Of(double percent)
    {
        double place = Math.Clamp((percent - LowestPercent) / (100 - LowestPercent), 0, 1);
        return place < 0.5 ? Between(Poor, Middle, 2 * place) : Between(Middle, Rich, (2 * place) - 1);
    }

    /// <summary>Whose blood it is.</summary>
    /// <param name="membraneShare">Share from the membrane lung over the beat, 0 to 1.</param>
    /// <returns>The kind. Blood that changes its kind over the beat counts as mixed.</returns>
    public static BloodKind KindOf(OverBeat membraneShare) =>
        membraneShare is { Mean: >= PureShare, Lowest: >= 0.5 } ? BloodKind.Membrane
        : membraneShare is { Mean: <= 1 - PureShare, Highest: <= 0.5 } ? BloodKind.Lungs
        : BloodKind.Mixed;

    /// <summary>The strokes of an artery, outermost first.</summary>
    /// <param name="points">Its course on the paper.</param>
    /// <param name="percent">Saturation, %.</param>
    /// <param name="kind">Whose blood it is.</param>
    /// <param name="widthMm">Width on the paper, mm.</param>
    /// <returns>Items.</returns>
    internal static IEnumerable<DrawingItem> Strokes(IReadOnlyList<Point> points, double percent, BloodKind kind, double widthMm)
    {
        yield return new Polyline(points, Style.Line(Of(percent), widthMm));
        if (kind != BloodKind.Membrane)
        {
            yield return new Polyline(points, Style.Line(Colour.Paper, Math.Max(0.28, 0.38 * widthMm), kind == BloodKind.Mixed ? Dash.Dashed : Dash.Solid));
        }
    }

    private static Colour Between(Colour from, Colour to, double share) => new(
        Part(from.Red, to.Red, share), Part(from.Green, to.Green, share), Part(from.Blue, to.Blue, share));

    private static byte Part(byte from, byte to, double share) => (byte)Math.Round(from + (share * (to - from)));
}
