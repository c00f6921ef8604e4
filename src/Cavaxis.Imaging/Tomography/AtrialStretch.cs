namespace Cavaxis.Imaging.Tomography;

/// <summary>The wide part between two veins, found by its calibre.</summary>
internal static class AtrialStretch
{
    private const double LeastRatio = 1.7;
    private const double TubeMm = 25;
    private const double GrownRatio = 1.2;
    private const double GrowthMm = 18;
    private const double LastingMm = 12;
    private const double MostOpen = 0.5;

    /// <summary>The places where the veins open into it.</summary>
    /// <param name="sections">Sections along the way, smoothed.</param>
    /// <returns>Upper and lower place; null each where it is not seen, with the reason.</returns>
    public static (Widening? Upper, Widening? Lower, string Reason) Find(IReadOnlyList<LumenSection> sections)
    {
        double[] area = [.. Enumerable.Range(0, sections.Count).Select(i =>
            (sections[Math.Max(0, i - 1)].AreaMm2 + sections[i].AreaMm2 + sections[Math.Min(sections.Count - 1, i + 1)].AreaMm2) / 3)];
        double end = VesselWalk.EndDiameter(sections);
        double narrow = Math.PI * end * end / 4;

        // Where hardly any wall was seen the line ran out of the vein into what lies beside it: that is no atrium, however wide.
        int widest = Enumerable.Range(0, area.Length).MaxBy(i => sections[i].OpenShare <= MostOpen ? area[i] : 0);
        if (area[widest] < LeastRatio * narrow || widest < 4 || widest > sections.Count - 5)
        {
            return (null, null, "no stretch between the seeds is much wider than the veins at both ends");
        }

        double step = sections[1].ArcMm - sections[0].ArcMm;
        (double At, double Area)[] down = [.. sections.Select((s, i) => (s.ArcMm, s.AreaMm2)).Take(widest + 1)];
        double last = sections[^1].ArcMm;
        (double At, double Area)[] up = [.. sections.Select((s, i) => (last - s.ArcMm, s.AreaMm2)).Skip(widest).Reverse()];
        Widening? upper = Edge(down, step);
        Widening? lower = Edge(up, step) is Widening found ? found with { AtMm = last - found.AtMm } : null;
        return (upper, lower, "calibre does not settle beside the widest place");
    }

    // From the widest place outwards: the first place that is hardly wider than the 25 mm of way beyond it, where these are as narrow as a vein. What
    // happens farther out (a branch, a wall that is lost, contrast that fills half of the vein) does not matter. It must stay so for 12 mm: a dip of the
    // atrium, whose wall is often not seen, is no vein.
    private static Widening? Edge((double At, double Area)[] way, double step)
    {
        int tube = Math.Max(4, (int)Math.Round(TubeMm / step));
        int lasting = Math.Max(4, (int)Math.Round(LastingMm / step));
        double vein = VesselWalk.AtrialRatio * VesselWalk.AtrialRatio * Spread.Median(way.Take(Math.Min(tube, way.Length / 2)).Select(static p => p.Area));
        for (int i = way.Length - 2; i >= 4; i--)
        {
            double beyond = Spread.Median(way.Skip(Math.Max(0, i - tube)).Take(Math.Min(tube, i)).Select(static p => p.Area));
            if (beyond <= vein && way.Skip(Math.Max(0, i - lasting + 1)).Take(Math.Min(lasting, i + 1)).All(p => p.Area <= GrownRatio * beyond))
            {
                double at = way[i].At;
                return Widening.Fit(way.Where(p => p.At > at - 2 && p.At < at + GrowthMm), beyond, at - 8, at + 6) ?? new Widening(at, 3);
            }
        }

        return null;
    }
}
