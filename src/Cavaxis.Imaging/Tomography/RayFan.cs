using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// What a scan shows along rays from a centre in a plane: the mean of three planes close together, after a binomial filter along each ray.
/// </summary>
internal sealed class RayFan
{
    /// <summary>Rays of a fan.</summary>
    public const int Rays = 48;

    /// <summary>Distance of readings on a ray, mm.</summary>
    public const double StepMm = 0.5;

    /// <summary>Farthest reading, mm: half of the widest atrium that is measured, with room.</summary>
    public const double ReachMm = 38;

    /// <summary>Readings on a ray; the first lies at the centre.</summary>
    public const int Readings = (int)(ReachMm / StepMm) + 1;

    private const double PlaneGapMm = 1.25;
    private const double CoreMm = 3;

    private readonly float[] values = new float[Rays * Readings];

    /// <summary>Reads a fan.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="centre">Where the rays start, mm.</param>
    /// <param name="across">Unit vector of the first ray.</param>
    /// <param name="upright">Unit vector a quarter turn on.</param>
    /// <param name="brightestHu">Readings above are not blood and are left out of the median near the centre, HU.</param>
    public RayFan(ScanSampler sampler, Vector3D centre, Vector3D across, Vector3D upright, double brightestHu)
    {
        (Centre, Across, Upright) = (centre, across, upright);
        Vector3D normal = across.Cross(upright);
        Span<double> raw = stackalloc double[Readings];
        List<double> core = [];
        for (int ray = 0; ray < Rays; ray++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * ray / Rays);
            Vector3D way = StepMm * ((cos * across) + (sin * upright));
            for (int n = 0; n < Readings; n++)
            {
                Vector3D at = centre + (n * way);
                raw[n] = (sampler.At(at - (PlaneGapMm * normal)) + sampler.At(at) + sampler.At(at + (PlaneGapMm * normal))) / 3;
            }

            for (int n = 0; n < Readings; n++)
            {
                double before = raw[Math.Max(0, n - 1)];
                double after = raw[Math.Min(Readings - 1, n + 1)];
                values[(ray * Readings) + n] = (float)((before + (2 * raw[n]) + after) / 4);
                if (n > 0 && n * StepMm <= CoreMm)
                {
                    core.Add(values[(ray * Readings) + n]);
                }
            }
        }

        List<double> blood = core.FindAll(hu => hu <= brightestHu);
        (CoreHu, CoreSpreadHu) = Spread.Of(2 * blood.Count >= core.Count ? blood : core);
    }

    /// <summary>Where the rays start, mm.</summary>
    public Vector3D Centre { get; }

    /// <summary>Unit vector of the first ray.</summary>
    public Vector3D Across { get; }

    /// <summary>Unit vector a quarter turn on.</summary>
    public Vector3D Upright { get; }

    /// <summary>Median near the centre, HU.</summary>
    public double CoreHu { get; }

    /// <summary>Spread near the centre, as a standard deviation, HU.</summary>
    public double CoreSpreadHu { get; }

    /// <summary>The readings of a ray, from the centre.</summary>
    /// <param name="ray">Which one; counted around.</param>
    public ReadOnlySpan<float> Ray(int ray) => values.AsSpan((((ray % Rays) + Rays) % Rays) * Readings, Readings);
}
