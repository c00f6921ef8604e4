namespace Cavaxis.Arteries.Network;

/// <summary>
/// The thin elastic wall: P = Pref + K (√W − √Wref), W the area that the wall encloses, K = (4/3) √π E h / Wref (Poisson's ratio 1/2).
/// The law of the benchmark set of 2015 (Int J Numer Meth Biomed Engng 31, e02732), from memory; it reproduces that set's input numbers.
/// </summary>
public static class TubeLaw
{
    /// <summary>Stiffness K, Pa/m.</summary>
    /// <param name="radius">Radius at the reference pressure, m.</param>
    /// <param name="wall">Wall thickness, m.</param>
    /// <param name="young">Young's modulus, Pa.</param>
    /// <returns>K.</returns>
    public static double Stiffness(double radius, double wall, double young) => 4.0 / 3 * Math.Sqrt(Math.PI) * young * wall / (Math.PI * radius * radius);

    /// <summary>Area enclosed at a radius, m².</summary>
    /// <param name="radius">Radius, m.</param>
    /// <returns>Area.</returns>
    public static double Area(double radius) => Math.PI * radius * radius;

    /// <summary>Speed of small waves in a vessel at rest, m/s: √(K √W / 2ρ) for a lumen without a body in it.</summary>
    /// <param name="stiffness">K, Pa/m.</param>
    /// <param name="enclosed">Area that the wall encloses, m².</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <returns>Wave speed.</returns>
    public static double WaveSpeed(double stiffness, double enclosed, double density) => Math.Sqrt(stiffness * Math.Sqrt(enclosed) / (2 * density));
}
