using Cavaxis.Arteries.Tree;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>Where the scheme of the arterial tree stands on the paper.</summary>
internal static class ArterialPaper
{
    /// <summary>Width of the paper, mm.</summary>
    internal const double WidthMm = 190;

    /// <summary>Upper edge of the scheme, mm.</summary>
    internal const double TopMm = 37;

    /// <summary>Paper for one unit of the scheme, mm.</summary>
    internal const double Scale = 0.96;

    /// <summary>Left edge of the scheme, mm.</summary>
    internal const double LeftMm = (WidthMm - (100 * Scale)) / 2;

    /// <summary>Lower edge of the scheme, mm.</summary>
    internal const double BottomMm = TopMm + (200 * Scale);

    /// <summary>Room of the labels on either side, mm.</summary>
    internal const double MarginMm = 47;

    /// <summary>A point of the scheme on the paper.</summary>
    /// <param name="point">The point.</param>
    /// <returns>Its place, mm.</returns>
    internal static Point At(LayoutPoint point) => new(LeftMm + (Scale * point.X), TopMm + (Scale * point.Y));

    /// <summary>The point at half the length of a course.</summary>
    /// <param name="course">At least two points.</param>
    /// <returns>Its place, mm.</returns>
    internal static Point Middle(IReadOnlyList<LayoutPoint> course)
    {
        Point[] points = [.. course.Select(At)];
        double[] lengths = [.. points.Skip(1).Select((p, i) => Math.Sqrt(Math.Pow(p.X - points[i].X, 2) + Math.Pow(p.Y - points[i].Y, 2)))];
        double left = lengths.Sum() / 2;
        for (int i = 0; i < lengths.Length; i++)
        {
            if (left <= lengths[i] && lengths[i] > 0)
            {
                double share = left / lengths[i];
                return new Point(points[i].X + (share * (points[i + 1].X - points[i].X)), points[i].Y + (share * (points[i + 1].Y - points[i].Y)));
            }

            left -= lengths[i];
        }

        return points[^1];
    }
}
