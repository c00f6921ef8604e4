using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// From a scan and two places inside of the veins to centreline, wall, junctions and directions. It gives an axis only when the way, its wall and its
/// repetition from the other end hold what <see cref="TraceGate"/> asks; otherwise it says what was wrong. No axis is given silently.
/// </summary>
public static class AxisTracer
{
    private const double GridMm = 2;
    private const double AsideMm = 45;
    private const double BeyondMm = 12;
    private const double LeastToleranceHu = 15;
    private const double MetalAboveHu = 120;
    private const double AirBelowHu = 300;
    private const int SmoothGrid = 2;

    /// <summary>Traces.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="request">Seeds and confirmed landmarks.</param>
    /// <returns>The axis, or why there is none.</returns>
    /// <exception cref="InputFaultException">A seed lies outside of the scan.</exception>
    public static AxisTrace Trace(ScanVolume scan, TraceRequest request)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ArgumentNullException.ThrowIfNull(request);
        ScanSampler whole = new(scan);
        SeedReading[] seeds = [.. request.Seeds.Select(seed => Seed(whole, seed))];
        if (TraceGate.Seeds(seeds) is TraceFailure unlikely)
        {
            return AxisTrace.None(unlikely, null);
        }

        double low = seeds.Min(static s => s.Hu);
        double high = seeds.Max(static s => s.Hu);
        ScanSampler sampler = new(scan, low - AirBelowHu, high + MetalAboveHu);
        double noise = seeds.Min(static s => s.NoiseHu);
        SpaceCurve way = Way(sampler, request.Seeds, low, high, noise, 0);
        SpaceCurve back = Way(sampler, [.. request.Seeds.Reverse()], low, high, noise, GridMm / 2);
        if (TraceGate.Way(sampler, way, low, noise) is TraceFailure gap)
        {
            return AxisTrace.None(gap, way);
        }

        VesselWalk walk = new(sampler, high + (0.9 * MetalAboveHu), high + Math.Max(40, 2.5 * noise), LeastToleranceHu);
        SpaceCurve line = walk.Centred(way, 4, 5);
        SpaceCurve repeated = walk.Centred(new SpaceCurve(back.Points.Reverse()), 4, 5);
        IReadOnlyList<LumenSection> raw = walk.Sections(line);
        IReadOnlyList<LumenSection> sections = VesselWalk.Smoothed(raw);
        (AxisLandmark superior, AxisLandmark inferior) = LandmarkFinder.Junctions(request, line, sections);
        TraceQuality quality = TraceGate.Measured(raw, repeated, line, superior, inferior, low, high, walk.NoiseHu);
        if (TraceGate.Judged(quality, sections, superior, inferior) is TraceFailure failure)
        {
            return AxisTrace.None(failure, way, quality);
        }

        TracedAxis axis = Finished(request, line, walk, sections, superior, inferior, scan);
        return AxisTrace.Found(axis, quality, CautionFinder.Of(scan, axis, seeds, walk.NoiseHu));
    }

    private static SeedReading Seed(ScanSampler sampler, Vector3D seed) => sampler.Holds(seed)
        ? SeedReading.Of(sampler, seed)
        : throw new InputFaultException(new InputFault(
            FaultCode.OutOfRange, "seed", FormattableString.Invariant($"{seed.X:F1}, {seed.Y:F1}, {seed.Z:F1} mm"), "a place inside of the scan", "Give the seed in the patient's coordinates, mm."));

    private static SpaceCurve Way(ScanSampler sampler, IReadOnlyList<Vector3D> seeds, double low, double high, double noise, double shift)
    {
        double tolerance = Math.Max(LeastToleranceHu, Math.Max(0.7 * noise, 0.3 * (low - 50)));
        List<Vector3D> points = [];
        for (int i = 0; i + 1 < seeds.Count; i++)
        {
            ScanGrid grid = LumenCost.Box(sampler, seeds[i], seeds[i + 1], AsideMm, BeyondMm, GridMm, shift).Smoothed(SmoothGrid);
            points.AddRange(MinimalPath.Between(LumenCost.Of(grid, low, high, tolerance), seeds[i], seeds[i + 1]).Way.Points);
        }

        return new SpaceCurve(points);
    }

    private static TracedAxis Finished(
        TraceRequest request, SpaceCurve line, VesselWalk walk, IReadOnlyList<LumenSection> sections, AxisLandmark superior, AxisLandmark inferior, ScanVolume scan)
    {
        CavalDirections? directions = AtrialWay.Directions(line, sections, superior, inferior);
        if (directions is not null)
        {
            SpaceCurve laid = AtrialWay.Laid(line, superior, inferior, directions);
            (superior, inferior) = (Moved(superior, laid), Moved(inferior, laid));
            (line, sections) = (laid, VesselWalk.Smoothed(walk.Sections(laid)));
        }

        List<AxisLandmark> landmarks = [superior, inferior, .. LandmarkFinder.Others(request, line, sections, inferior)];
        landmarks.Sort(static (a, b) => a.Landmark.CompareTo(b.Landmark));
        return new TracedAxis(line, sections, landmarks, DiameterSd(walk, sections, superior, inferior, scan), directions);
    }

    private static AxisLandmark Moved(AxisLandmark landmark, SpaceCurve line) => landmark with { ArcMm = line.Nearest(landmark.Place).ArcMm };

    // A ray is off by about noise × its step/contrast, 48 rays of which a third tell something new; and by a share of a voxel at all of them.
    private static double DiameterSd(VesselWalk walk, IReadOnlyList<LumenSection> sections, AxisLandmark superior, AxisLandmark inferior, ScanVolume scan)
    {
        double contrast = Spread.Median(sections.Where(s => !Within(s, superior, inferior)).Select(static s => s.ContrastHu));
        double ray = walk.NoiseHu / Math.Max(1, contrast) * 2;
        double noise = 2 * ray / Math.Sqrt(RayFan.Rays / 3.0);
        double voxel = 0.15 * Math.Max(scan.ColumnStep.Length, scan.RowStep.Length);
        return Math.Sqrt((noise * noise) + (voxel * voxel));
    }

    private static bool Within(LumenSection section, AxisLandmark superior, AxisLandmark inferior) =>
        superior.IsThere && inferior.IsThere && section.ArcMm > superior.ArcMm && section.ArcMm < inferior.ArcMm;
}
