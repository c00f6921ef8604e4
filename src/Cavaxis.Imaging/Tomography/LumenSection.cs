using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>The wall of a vessel in the plane square to its centreline, as distances from the centre at even angles.</summary>
/// <param name="ArcMm">Length along the centreline from its upper end, mm.</param>
/// <param name="Centre">Where the rays start, mm.</param>
/// <param name="Across">Unit vector of the first ray.</param>
/// <param name="Upright">Unit vector of the ray a quarter turn on.</param>
/// <param name="RadiiMm">Distance of the wall at even angles from <paramref name="Across"/> towards <paramref name="Upright"/>, mm.</param>
/// <param name="InsideHu">Middle value about the centre, HU.</param>
/// <param name="ContrastHu">Middle difference between inside and outside at the wall, HU, without sign.</param>
/// <param name="OpenShare">Share of the rays on which no wall was seen; there its distance was taken from the neighbours.</param>
public sealed record LumenSection(
    double ArcMm, Vector3D Centre, Vector3D Across, Vector3D Upright, IReadOnlyList<double> RadiiMm, double InsideHu, double ContrastHu, double OpenShare)
{
    /// <summary>Area, mm²: half the mean square of the distances times a full turn, exact for a circle.</summary>
    public double AreaMm2 => Math.PI * RadiiMm.Average(static r => r * r);

    /// <summary>Diameter of the circle of the same area, mm.</summary>
    public double DiameterMm => 2 * Math.Sqrt(RadiiMm.Average(static r => r * r));

    /// <summary>Centre of the area, mm.</summary>
    public Vector3D Centroid
    {
        get
        {
            double turn = 2 * Math.PI / RadiiMm.Count;
            double across = 0;
            double upright = 0;
            for (int i = 0; i < RadiiMm.Count; i++)
            {
                (double sin, double cos) = Math.SinCos(i * turn);
                double cube = RadiiMm[i] * RadiiMm[i] * RadiiMm[i];
                across += cube * cos;
                upright += cube * sin;
            }

            double factor = turn / (3 * AreaMm2);
            return Centre + (factor * across * Across) + (factor * upright * Upright);
        }
    }

    /// <summary>The wall as places.</summary>
    /// <returns>One a ray, mm.</returns>
    public IEnumerable<Vector3D> Wall()
    {
        for (int i = 0; i < RadiiMm.Count; i++)
        {
            (double sin, double cos) = Math.SinCos(2 * Math.PI * i / RadiiMm.Count);
            yield return Centre + (RadiiMm[i] * ((cos * Across) + (sin * Upright)));
        }
    }
}
