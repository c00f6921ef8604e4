namespace Cavaxis.Reports.Drawings;

/// <summary>
/// Cuts hatch lines to the inside of a polygon by scan lines (even-odd rule), so that both renderers draw the very same
/// lines and no pattern identifier can clash between drawings on one page.
/// </summary>
internal static class HatchLines
{
    /// <summary>The pieces of the pattern inside a polygon.</summary>
    /// <param name="outline">Corners in order.</param>
    /// <param name="hatch">The pattern.</param>
    /// <param name="spacingMm">Distance between lines, mm, above zero.</param>
    /// <returns>Pieces from end to end.</returns>
    internal static IReadOnlyList<(Point From, Point To)> Inside(IReadOnlyList<Point> outline, Hatch hatch, double spacingMm)
    {
        var pieces = new List<(Point, Point)>();
        foreach (double angleDeg in Directions(hatch))
        {
            AddDirection(outline, angleDeg, spacingMm, pieces);
        }

        return pieces;
    }

    private static double[] Directions(Hatch hatch) => hatch switch
    {
        Hatch.Rising => [-45],
        Hatch.Falling => [45],
        Hatch.Crossed => [-45, 45],
        Hatch.Level => [0],
        Hatch.Upright => [90],
        _ => [],
    };

    private static void AddDirection(
        IReadOnlyList<Point> outline, double angleDeg, double spacingMm, List<(Point From, Point To)> pieces)
    {
        (double sin, double cos) = Math.SinCos(angleDeg * Math.PI / 180);
        Point[] turned = [.. outline.Select(p => new Point((p.X * cos) + (p.Y * sin), (p.Y * cos) - (p.X * sin)))];
        Box box = Box.Around(turned);
        var crossings = new List<double>();

        // Lines lie at odd half multiples of the spacing on the paper, so that neighbouring areas have joined-up patterns.
        for (long k = (long)Math.Ceiling((box.Top / spacingMm) - 0.5); (k + 0.5) * spacingMm < box.Bottom; k++)
        {
            double y = (k + 0.5) * spacingMm;
            crossings.Clear();
            for (int i = 0; i < turned.Length; i++)
            {
                Point a = turned[i];
                Point b = turned[(i + 1) % turned.Length];
                if ((a.Y <= y) != (b.Y <= y))
                {
                    crossings.Add(a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)));
                }
            }

            crossings.Sort();
            for (int i = 0; i + 1 < crossings.Count; i += 2)
            {
                Point Back(double x) => new((x * cos) - (y * sin), (x * sin) + (y * cos));
                pieces.Add((Back(crossings[i]), Back(crossings[i + 1])));
            }
        }
    }
}
