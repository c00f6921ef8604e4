using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>What a scan shows about a seed.</summary>
/// <param name="Place">The seed, mm.</param>
/// <param name="Hu">Median within 3 mm, HU.</param>
/// <param name="NoiseHu">Spread within 3 mm as a standard deviation, HU.</param>
public readonly record struct SeedReading(Vector3D Place, double Hu, double NoiseHu)
{
    private const double BallMm = 3;
    private const double StepMm = 0.75;

    /// <summary>Reads it.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="place">The seed, mm.</param>
    /// <param name="ballMm">How far around it, mm.</param>
    internal static SeedReading Of(ScanSampler sampler, Vector3D place, double ballMm = BallMm)
    {
        List<double> readings = [];
        for (double x = -ballMm; x <= ballMm; x += StepMm)
        {
            for (double y = -ballMm; y <= ballMm; y += StepMm)
            {
                for (double z = -ballMm; z <= ballMm; z += StepMm)
                {
                    Vector3D off = new(x, y, z);
                    if (off.Length <= ballMm)
                    {
                        readings.Add(sampler.At(place + off));
                    }
                }
            }
        }

        (double middle, double spread) = Spread.Of(readings);
        return new SeedReading(place, middle, spread);
    }
}
