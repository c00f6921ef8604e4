using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>Reads the wall along a line and moves the line into the middle of the vessel where there is a vessel around it.</summary>
internal sealed class VesselWalk
{
    /// <summary>Distance of sections, mm.</summary>
    public const double StepMm = 2;

    /// <summary>A section this much wider than the veins at both ends is the atrium.</summary>
    public const double AtrialRatio = 1.45;

    private const double EndStretchMm = 25;
    private const double MostOpen = 0.3;
    private const double TangentMm = 6;
    private const int AlikeSections = 2;
    private const double UsualMm = 20;
    private const double BulgeRatio = 1.12;
    private const double BridgeMm = 30;

    private readonly ScanSampler sampler;
    private readonly double metalHu;
    private readonly double brightestHu;
    private readonly double leastToleranceHu;

    /// <summary>A walk through a scan.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="metalHu">From here on a reading is metal, HU.</param>
    /// <param name="brightestHu">Brighter than blood anywhere on the way, HU.</param>
    /// <param name="leastToleranceHu">Smallest step at a wall that is looked for, HU.</param>
    public VesselWalk(ScanSampler sampler, double metalHu, double brightestHu, double leastToleranceHu) =>
        (this.sampler, this.metalHu, this.brightestHu, this.leastToleranceHu) = (sampler, metalHu, brightestHu, leastToleranceHu);

    /// <summary>Spread of the readings inside of the vessel after the mean of three planes, HU; known after <see cref="Sections"/>.</summary>
    public double NoiseHu { get; private set; }

    /// <summary>Moves a line into the middle of the vessel.</summary>
    /// <param name="line">The line.</param>
    /// <param name="times">How often.</param>
    /// <param name="smoothMm">Width of the filter after each time, mm.</param>
    /// <returns>The line moved.</returns>
    public SpaceCurve Centred(SpaceCurve line, int times, double smoothMm)
    {
        SpaceCurve now = line.Resampled(StepMm).Smoothed(smoothMm).Resampled(StepMm);
        for (int time = 0; time < times; time++)
        {
            IReadOnlyList<LumenSection> sections = Sections(now);
            bool[] vessel = Vessel(sections);
            Vector3D[] centres = [.. sections.Select(static s => s.Centre)];
            for (int i = 0; i < centres.Length; i++)
            {
                Vector3D off = sections[i].Centroid - sections[i].Centre;
                double most = sections[i].DiameterMm / 3;
                centres[i] += vessel[i] ? (off.Length > most ? most / off.Length * off : off) : Vector3D.Zero;
            }

            Bridge(centres, vessel);
            now = new SpaceCurve(centres).Smoothed(smoothMm).Resampled(StepMm);
        }

        return now;
    }

    // Round a branch the middle of the section is not that of the vein; there and in short gaps the line goes straight on.
    private static void Bridge(Vector3D[] centres, bool[] vessel)
    {
        int last = Array.IndexOf(vessel, true);
        for (int i = last + 1; last >= 0 && i < centres.Length; i++)
        {
            if (vessel[i])
            {
                for (int n = last + 1; n < i && (i - last) * StepMm <= BridgeMm; n++)
                {
                    centres[n] = centres[last] + ((n - last) / (double)(i - last) * (centres[i] - centres[last]));
                }

                last = i;
            }
        }
    }

    private static bool[] Vessel(IReadOnlyList<LumenSection> sections)
    {
        double widest = AtrialRatio * EndDiameter(sections);
        int beside = (int)(UsualMm / StepMm);
        return
        [
            .. sections.Select((section, i) => section.OpenShare <= MostOpen && section.DiameterMm <= widest
                && section.DiameterMm <= BulgeRatio * Spread.Median(sections.Skip(Math.Max(0, i - beside)).Take((2 * beside) + 1).Select(static s => s.DiameterMm))),
        ];
    }

    /// <summary>The wall at even lengths along a line.</summary>
    /// <param name="line">The line.</param>
    /// <returns>One section every two millimetres or so.</returns>
    public IReadOnlyList<LumenSection> Sections(SpaceCurve line)
    {
        int count = Math.Max(3, (int)Math.Round(line.LengthMm / StepMm) + 1);
        double step = line.LengthMm / (count - 1);
        RayFan[] fans = new RayFan[count];
        (Vector3D Across, Vector3D Upright)[] frames = Frames(line, count, step);
        _ = Parallel.For(0, count, i => fans[i] = new RayFan(sampler, line.At(i * step), frames[i].Across, frames[i].Upright, brightestHu));
        NoiseHu = Spread.Median(fans.Select(static f => f.CoreSpreadHu));
        double tolerance = Math.Max(leastToleranceHu, 2.5 * NoiseHu);
        LumenSection[] sections = new LumenSection[count];
        _ = Parallel.For(0, count, i =>
        {
            int from = Math.Max(0, i - AlikeSections);
            int to = Math.Min(count - 1, i + AlikeSections);
            double inside = Spread.Median(fans.Skip(from).Take(to - from + 1).Select(static f => f.CoreHu));
            sections[i] = WallFinder.Find(fans[i], i * step, inside, Math.Max(tolerance, TissueShare * Math.Abs(inside - TissueHu)), metalHu);
        });
        return sections;
    }

    /// <summary>The wider of the median diameters at both ends, mm.</summary>
    /// <param name="sections">Sections along a line.</param>
    public static double EndDiameter(IReadOnlyList<LumenSection> sections)
    {
        double last = sections[^1].ArcMm;
        double stretch = Math.Min(EndStretchMm, last / 4);
        double upper = Spread.Median(sections.Where(s => s.ArcMm <= stretch).Select(static s => s.DiameterMm));
        double lower = Spread.Median(sections.Where(s => s.ArcMm >= last - stretch).Select(static s => s.DiameterMm));
        return Math.Max(upper, lower);
    }

    /// <summary>Sections with the wall smoothed along the line: the median of three, then a Gaussian.</summary>
    /// <param name="sections">Sections at even lengths, whose rays turn as little as the line lets them.</param>
    /// <returns>As many sections.</returns>
    public static IReadOnlyList<LumenSection> Smoothed(IReadOnlyList<LumenSection> sections)
    {
        int count = sections.Count;
        double[][] middle = [.. Enumerable.Range(0, count).Select(i => Enumerable.Range(0, RayFan.Rays).Select(ray => Spread.Median(
            [Radius(sections, i - 1, ray), Radius(sections, i, ray), Radius(sections, i + 1, ray)])).ToArray())];
        return
        [
            .. sections.Select((section, i) => section with
            {
                RadiiMm = [.. Enumerable.Range(0, RayFan.Rays).Select(ray => (0.25 * middle[Math.Max(0, i - 1)][ray]) + (0.5 * middle[i][ray]) + (0.25 * middle[Math.Min(count - 1, i + 1)][ray]))],
            }),
        ];
    }

    // Contrast against soft tissue is known only roughly; a third of it is still far from either side of the wall.
    private const double TissueHu = 50;
    private const double TissueShare = 0.3;

    private static double Radius(IReadOnlyList<LumenSection> sections, int i, int ray) => sections[Math.Clamp(i, 0, sections.Count - 1)].RadiiMm[ray];

    private static (Vector3D Across, Vector3D Upright)[] Frames(SpaceCurve line, int count, double step)
    {
        (Vector3D Across, Vector3D Upright)[] frames = new (Vector3D, Vector3D)[count];
        Vector3D across = new(1, 0, 0);
        for (int i = 0; i < count; i++)
        {
            Vector3D normal = line.Direction(i * step, TangentMm);
            Vector3D square = across - (across.Dot(normal) * normal);
            across = square.Length > 0.1 ? square.Unit : new Vector3D(0, 1, 0).Cross(normal).Unit;
            frames[i] = (across, normal.Cross(across));
        }

        return frames;
    }
}
