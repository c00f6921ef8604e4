using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>
/// Paints the ends of the side veins: two waves with a gap where the vein goes on beyond the drawing, a skin line where it
/// ends within. Painted over the cannulae, so that the gap cuts them too.
/// </summary>
internal static class BreakPainter
{
    private const double FirstWaveMm = 2.4;
    private const double GapMm = 1.5;
    private const int WavePieces = 24;

    /// <summary>All four ends.</summary>
    internal static IEnumerable<DrawingItem> Paint(AxisScene scene, AxisFrame frame, AxisTrunk trunk)
    {
        foreach (EntrySite site in Enum.GetValues<EntrySite>())
        {
            bool neck = site is EntrySite.RightNeck or EntrySite.LeftNeck;
            double end = neck ? frame.ZTop : frame.ZBottom;
            double outer = trunk.OuterEnd(site, scene.SkinOf(site));
            double half = (trunk.Radius(end, d => d.Median) * 0.72) + 1.1;
            IReadOnlyList<Point> way = trunk.Way(site, outer, neck ? frame.ZTop + 1 : frame.ZBottom - 1);
            if (scene.SkinOf(site) is double skin && Math.Abs(skin - outer) < 1e-6)
            {
                yield return new Polyline(Wave(way, 0, half + 1.5, height: 0), Style.Line(Colour.Ink, 0.7));
                continue;
            }

            Point[] first = Wave(way, FirstWaveMm, half, height: 0.7);
            Point[] second = Wave(way, FirstWaveMm + GapMm, half, height: 0.7);
            yield return new Polygon([.. first, .. second.Reverse()], Style.Area(Colour.Paper));
            yield return new Polyline(first, Style.Line(Colour.Ink, 0.3));
            yield return new Polyline(second, Style.Line(Colour.Ink, 0.3));
        }
    }

    private static Point[] Wave(IReadOnlyList<Point> way, double along, double half, double height)
    {
        double length = Math.Max(1e-6, way[0].DistanceTo(way[1]));
        double ux = (way[1].X - way[0].X) / length;
        double uy = (way[1].Y - way[0].Y) / length;
        Point middle = way[0].Moved(ux * along, uy * along);
        return
        [
            .. Enumerable.Range(0, WavePieces + 1).Select(i =>
            {
                double t = ((2.0 * i) / WavePieces) - 1;
                double bend = height * Math.Sin(t * Math.PI);
                return middle.Moved((-uy * half * t) + (ux * bend), (ux * half * t) + (uy * bend));
            }),
        ];
    }
}
