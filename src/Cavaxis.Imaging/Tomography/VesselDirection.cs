using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>The straight line through a stretch of centreline, by least squares.</summary>
/// <param name="Towards">Unit vector towards the feet.</param>
/// <param name="SdDeg">Error of its direction as a standard deviation, degrees.</param>
/// <param name="LengthMm">Length of the stretch, mm.</param>
public sealed record VesselDirection(Vector3D Towards, double SdDeg, double LengthMm)
{
    /// <summary>Deviations of a centreline are alike over about this length, mm: so many are counted as one.</summary>
    private const double AlikeMm = 8;

    private const double LeastSdDeg = 0.5;
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>Angle against straight down in the frontal plane, degrees, positive to the patient's right on the way down.</summary>
    public double FrontalDeg => Math.Atan2(-Towards.X, -Towards.Z) * DegreesPerRadian;

    /// <summary>Angle against straight down in the sagittal plane, degrees, positive to the back on the way down.</summary>
    public double SagittalDeg => Math.Atan2(Towards.Y, -Towards.Z) * DegreesPerRadian;

    /// <summary>Fits one.</summary>
    /// <param name="line">The centreline, towards the feet.</param>
    /// <param name="fromMm">From this length along it, mm.</param>
    /// <param name="toMm">To this one, mm.</param>
    internal static VesselDirection Of(SpaceCurve line, double fromMm, double toMm)
    {
        int pieces = Math.Max(4, (int)Math.Round(toMm - fromMm));
        double step = (toMm - fromMm) / pieces;
        Vector3D[] at = [.. Enumerable.Range(0, pieces + 1).Select(i => line.At(fromMm + (i * step)))];
        Vector3D middle = at.Aggregate(Vector3D.Zero, static (a, b) => a + b) / at.Length;
        Vector3D slope = Vector3D.Zero;
        for (int i = 0; i < at.Length; i++)
        {
            slope += (i - (0.5 * pieces)) * (at[i] - middle);
        }

        Vector3D unit = slope.Unit;
        double square = 0;
        foreach (Vector3D place in at)
        {
            Vector3D off = place - middle;
            square += (off - (off.Dot(unit) * unit)).SquaredLength / 2;
        }

        double length = toMm - fromMm;
        double spread = Math.Sqrt(square / at.Length);
        double fit = spread * Math.Sqrt(12 / Math.Max(2, length / AlikeMm)) / length * DegreesPerRadian;
        return new VesselDirection(unit, Math.Sqrt((fit * fit) + (LeastSdDeg * LeastSdDeg)), length);
    }
}
