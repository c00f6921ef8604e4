using System.Globalization;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Ruler, scale bar, sides in words and legend.</summary>
internal static class AxisFurniture
{
    /// <summary>Height of legend, scale and notes, mm, without the note's lines.</summary>
    internal const double LegendMm = 24;

    private const double SmallPt = 6.8;
    private const double LineMm = 3.1;

    /// <summary>Lines of the note.</summary>
    internal static IReadOnlyList<string> NoteLines(AxisScene scene) => scene.Note.Length == 0
        ? []
        : TextMetrics.Wrapped(PrintableText.OneLine(scene.Note), AxisFrame.PaperWidth, SmallPt);

    /// <summary>Which side is which.</summary>
    internal static IEnumerable<DrawingItem> Sides() =>
    [
        new Text(new(AxisFrame.BodyLeft - 4, 4), "◀ patient's right", SmallPt, TextAnchor.Middle, Bold: true),
        new Text(new(AxisFrame.BodyRight + 5, 4), "patient's left ▶", SmallPt, TextAnchor.Middle, Bold: true),
        new Text(new((AxisFrame.BodyLeft + AxisFrame.BodyRight) / 2, 8), "seen from the front", SmallPt, TextAnchor.Middle, Colour: Colour.Muted),
    ];

    /// <summary>The ruler in cm; its zero is the zero of the axis.</summary>
    internal static IEnumerable<DrawingItem> Ruler(AxisFrame frame)
    {
        const double x = AxisFrame.Ruler;
        yield return new Line(new(x, frame.TrunkTop), new(x, frame.TrunkBottom), Style.Line(Colour.Muted, 0.2));
        double step = frame.Scale <= 5 ? 10 : 50;
        int labelled = frame.Scale <= 1 ? 2 : frame.Scale <= 5 ? 5 : 2;
        for (long k = (long)Math.Ceiling(frame.ZTop / step); k * step <= frame.ZBottom; k++)
        {
            double y = frame.Y(k * step);
            bool heavy = k % labelled == 0;
            yield return new Line(new(x, y), new(x + (heavy ? 1.6 : 0.8), y), Style.Line(Colour.Muted, heavy ? 0.3 : 0.15));
            if (heavy)
            {
                string words = (Math.Abs(k) * step / 10).ToString("0", CultureInfo.InvariantCulture);
                yield return new Text(new(x - 0.6, y + 0.8), words, 6, TextAnchor.End, Colour: Colour.Muted);
            }
        }

        yield return new Text(new(x, frame.TrunkTop - 2), "cm", 6, TextAnchor.Middle, Colour: Colour.Muted);
    }

    /// <summary>Scale bar, scale, signs in words, note.</summary>
    internal static IEnumerable<DrawingItem> Legend(AxisScene scene, AxisFrame frame, double top)
    {
        yield return new Line(new(0, top), new(AxisFrame.PaperWidth, top), Style.Line(Colour.Faint, 0.2));
        double barMm = new[] { 100.0, 50, 20, 10, 5 }.First(l => l / frame.Scale <= 40 || l == 5);
        double y = top + 5;
        double bar = barMm / frame.Scale;
        yield return new Line(new(0.3, y), new(0.3 + bar, y), Style.Line(Colour.Ink, 0.8));
        yield return new Line(new(0.3, y - 1.2), new(0.3, y + 1.2), Style.Line(Colour.Ink, 0.3));
        yield return new Line(new(0.3 + bar, y - 1.2), new(0.3 + bar, y + 1.2), Style.Line(Colour.Ink, 0.3));
        yield return new Text(
            new(bar + 3, y + 0.9),
            string.Create(CultureInfo.InvariantCulture, $"{barMm / 10:0.#} cm   ·   Scale {frame.ScaleWords} printed on A4 at 100 %"), 7.2, Bold: true);

        bool cannulae = scene.Cannulae.Count > 0;
        (bool Needed, Func<Point, IEnumerable<DrawingItem>> Sign, string Words)[] all =
        [
            (true, c => [Swatch(c, Style.Hatched(Hatch.Level, Colour.Ink) with { HatchSpacingMm = 0.7 }), Tick(c, Colour.Ink)], "landmark: hatched 5–95 %, bar at the median"),
            (cannulae, c => [Swatch(c, Style.Hatched(Hatch.Rising, Colour.Drainage) with { HatchSpacingMm = 0.7 }), Tick(c, Colour.Drainage)], "drainage holes: rising hatch, arrows inward"),
            (cannulae, c => [Swatch(c, Style.Hatched(Hatch.Falling, Colour.Return) with { HatchSpacingMm = 0.7 }), Tick(c, Colour.Return)], "return port: falling hatch, arrow outward"),
            (cannulae, c => [Swatch(c, Style.Line(Colour.Accepted, 0.4))], "open frame: wanted zone; dashed where not met"),
            (true, c => [new Line(c.Moved(-2.5, -0.7), c.Moved(2.5, -0.7), Style.Line(Colour.Wall, 0.45)), new Line(c.Moved(-2.5, 0.7), c.Moved(2.5, 0.7), Style.Line(Colour.Wall, 0.18, Dash.Dotted))], "wall at the median lumen; dotted at 5 and 95 %"),
            (true, c => [new Polyline([c.Moved(-2.5, 0.5), .. Curve.Bezier(c.Moved(-2.5, 0.5), c.Moved(-1, -2), c.Moved(1, 2), c.Moved(2.5, -0.5))], Style.Line(Colour.Ink, 0.3))], "wave: the vein goes on; true distance in words"),
        ];
        (bool Needed, Func<Point, IEnumerable<DrawingItem>> Sign, string Words)[] signs = [.. all.Where(a => a.Needed)];
        for (int i = 0; i < signs.Length; i++)
        {
            var c = new Point(3 + ((i % 2) * 88), top + 10.5 + ((i / 2) * 3.7));
            foreach (DrawingItem item in signs[i].Sign(c))
            {
                yield return item;
            }

            yield return new Text(c.Moved(4.5, 0.85), signs[i].Words, SmallPt);
        }

        double line = top + 22.5;
        yield return new Text(
            new(0, line), "Lengths along the axis, lumens, valve and cannulae to scale; outline of the heart and course of branches schematic.", SmallPt, Colour: Colour.Muted);
        foreach (string words in NoteLines(scene))
        {
            line += LineMm;
            yield return new Text(new(0, line), words, SmallPt, Colour: Colour.Muted);
        }
    }

    private static Rectangle Swatch(Point c, Style style) => new(new Box(c.X - 2.5, c.Y - 1, c.X + 2.5, c.Y + 1), style);

    private static Line Tick(Point c, Colour tone) => new(c.Moved(0, -1.3), c.Moved(0, 1.3), Style.Line(tone, 0.6));
}
