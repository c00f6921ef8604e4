using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// What a traced way must hold to be given. Every limit was set on phantoms with known answers (docs/models/tomography.md); a way that fails
/// one is reported with the number that says why.
/// </summary>
internal static class TraceGate
{
    private const double LowestSeedHu = -20;
    private const double HighestSeedHu = 900;
    private const double MostAwayShare = 0.12;
    private const double LeastClosedShare = 0.8;
    private const double MostOpenMm = 24;
    private const double LeastContrastToNoise = 2.2;
    private const double MostRoughness = 0.09;
    private const double MostRepeatMm = 3;
    private const double MostGapHu = 40;
    private const double MostGapShare = 0.5;
    private const double TissueHu = 50;
    private const double GapBallMm = 1.5;
    private const double NarrowestMm = 2.5;
    private const double WidestMm = 42;
    private const double OpenShare = 0.3;

    /// <summary>Whether the seeds can lie in blood.</summary>
    /// <param name="seeds">What the scan shows at them, from head to feet.</param>
    /// <returns>Null where they can.</returns>
    public static TraceFailure? Seeds(IReadOnlyList<SeedReading> seeds)
    {
        for (int i = 0; i < seeds.Count; i++)
        {
            if (seeds[i].Hu is < LowestSeedHu or > HighestSeedHu)
            {
                return new TraceFailure(TraceFault.SeedOutsideLumen, FormattableString.Invariant(
                    $"Seed {i + 1} from the head reads {seeds[i].Hu:F0} HU; blood with or without contrast reads {LowestSeedHu:F0} to {HighestSeedHu:F0} HU. Set it in the middle of the vein."));
            }
        }

        return null;
    }

    /// <summary>Whether the cheapest way crosses a wall: a short stretch that reads much less than the lower seed.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="way">The way.</param>
    /// <param name="lowHu">Lower value at the seeds, HU.</param>
    /// <param name="noiseHu">Spread at the seeds, HU.</param>
    /// <returns>Null where it does not.</returns>
    public static TraceFailure? Way(ScanSampler sampler, SpaceCurve way, double lowHu, double noiseHu)
    {
        // A ball of 1.5 mm holds too few voxels to tell a gap from much noise: the limit widens with it.
        double allowed = Math.Max(MostGapHu, Math.Max(2 * noiseHu, MostGapShare * (lowHu - TissueHu)));
        for (double arc = 0; arc <= way.LengthMm; arc += 1)
        {
            double here = SeedReading.Of(sampler, way.At(arc), GapBallMm).Hu;
            if (here < lowHu - allowed)
            {
                return new TraceFailure(TraceFault.WayLeavesLumen, FormattableString.Invariant(
                    $"{arc:F0} mm below the upper seed the way goes through {here:F0} HU, the lower seed value is {lowHu:F0} HU (limit {allowed:F0} HU less): it leaves the vein or crosses a wall there. Set both seeds into one vessel, or nearer to each other."));
            }
        }

        return null;
    }

    /// <summary>Measures the quality.</summary>
    /// <param name="raw">Sections before smoothing.</param>
    /// <param name="repeated">The line found from the other end.</param>
    /// <param name="line">The line.</param>
    /// <param name="superior">Superior junction.</param>
    /// <param name="inferior">Inferior junction.</param>
    /// <param name="lowHu">Lower value at the seeds, HU.</param>
    /// <param name="highHu">Higher value at the seeds, HU.</param>
    /// <param name="noiseHu">Spread inside, HU.</param>
    public static TraceQuality Measured(
        IReadOnlyList<LumenSection> raw, SpaceCurve repeated, SpaceCurve line, AxisLandmark superior, AxisLandmark inferior, double lowHu, double highHu, double noiseHu)
    {
        double widest = VesselWalk.AtrialRatio * VesselWalk.EndDiameter(raw);
        bool Atrial(LumenSection s) => superior.IsThere && inferior.IsThere ? s.ArcMm > superior.ArcMm - 4 && s.ArcMm < inferior.ArcMm + 4 : s.DiameterMm > widest;
        LumenSection[] vessel = [.. raw.Where(s => !Atrial(s))];
        double allowed = Math.Max(25, Math.Max(1.5 * noiseHu, 0.2 * (highHu - 50)));
        double away = raw.Count(s => s.InsideHu < lowHu - allowed || s.InsideHu > highHu + allowed) / (double)raw.Count;
        double longest = 0;
        double run = 0;
        foreach (LumenSection section in raw)
        {
            run = !Atrial(section) && section.OpenShare > OpenShare ? run + VesselWalk.StepMm : 0;
            longest = Math.Max(longest, run);
        }

        List<double> changes = [];
        for (int i = 2; i < raw.Count; i++)
        {
            if (!Atrial(raw[i]) && !Atrial(raw[i - 2]))
            {
                changes.Add(Math.Abs(raw[i].DiameterMm - raw[i - 2].DiameterMm) / raw[i].DiameterMm);
            }
        }

        double[] apart = [.. vessel.Select(s => repeated.Nearest(line.At(s.ArcMm)).DistanceMm).Order()];
        return new TraceQuality(
            raw.Average(static s => s.InsideHu),
            away,
            vessel.Length == 0 ? 0 : vessel.Count(static s => s.OpenShare <= OpenShare) / (double)vessel.Length,
            longest,
            vessel.Length == 0 ? 0 : Contrast(vessel, superior, inferior) / Math.Max(1, noiseHu),
            changes.Count == 0 ? 1 : Spread.Median(changes),
            apart.Length == 0 ? double.PositiveInfinity : apart[(int)(0.9 * (apart.Length - 1))]);
    }

    // Each vein by itself: a good wall in the one must not hide that there is none in the other.
    private static double Contrast(LumenSection[] vessel, AxisLandmark superior, AxisLandmark inferior)
    {
        double middle = superior.IsThere && inferior.IsThere ? (superior.ArcMm + inferior.ArcMm) / 2 : double.PositiveInfinity;
        return vessel.GroupBy(s => s.ArcMm < middle).Min(static vein => Spread.Median(vein.Select(static s => s.ContrastHu)));
    }

    /// <summary>Holds the quality against the limits.</summary>
    /// <param name="q">The quality.</param>
    /// <param name="sections">The wall.</param>
    /// <param name="superior">Superior junction.</param>
    /// <param name="inferior">Inferior junction.</param>
    /// <returns>Null where all hold.</returns>
    public static TraceFailure? Judged(TraceQuality q, IReadOnlyList<LumenSection> sections, AxisLandmark superior, AxisLandmark inferior)
    {
        const string Look = "Look at the pictures, move the seeds to the middle of the vein and nearer to each other, or measure by hand.";
        double[] ends = [.. sections.Where(s => !superior.IsThere || !inferior.IsThere || s.ArcMm < superior.ArcMm || s.ArcMm > inferior.ArcMm).Select(static s => s.DiameterMm)];
        double narrow = ends.Length == 0 ? 0 : ends.Min();
        double middle = ends.Length == 0 ? 0 : Spread.Median(ends);
        return q.AwayShare > MostAwayShare
                ? new(TraceFault.WayLeavesLumen, FormattableString.Invariant($"Over {100 * q.AwayShare:F0} % of the way the scan does not look like the seeds (limit {100 * MostAwayShare:F0} %). {Look}"))
            : q.ContrastToNoise < LeastContrastToNoise
                ? new(TraceFault.NoWall, FormattableString.Invariant($"The wall stands out by {q.ContrastToNoise:F1} times the noise (limit {LeastContrastToNoise:F1}): without contrast or with much noise there is nothing to follow. {Look}"))
            : q.Roughness > MostRoughness
                ? new(TraceFault.NoWall, FormattableString.Invariant($"The diameter jumps by {100 * q.Roughness:F0} % between neighbouring sections (limit {100 * MostRoughness:F0} %): what was found is noise, not a wall. {Look}"))
            : q.ClosedShare < LeastClosedShare || q.LongestOpenMm > MostOpenMm
                ? new(TraceFault.Leak, FormattableString.Invariant($"The wall is closed over {100 * q.ClosedShare:F0} % of the veins (at least {100 * LeastClosedShare:F0} %) and open for {q.LongestOpenMm:F0} mm at once (at most {MostOpenMm:F0} mm): something beside the vein looks like it. {Look}"))
            : middle > WidestMm || narrow < NarrowestMm
                ? new(TraceFault.ImplausibleCalibre, FormattableString.Invariant($"Diameters of {narrow:F1} mm at the narrowest and {middle:F1} mm in the middle are none of a vein ({NarrowestMm:F1} to {WidestMm:F0} mm). {Look}"))
            : q.RepeatMm > MostRepeatMm
                ? new(TraceFault.NotRepeatable, FormattableString.Invariant($"Traced from the other end the line comes out {q.RepeatMm:F1} mm away (limit {MostRepeatMm:F0} mm). {Look}"))
            : null;
    }
}
