namespace Cavaxis.Validation;

/// <summary>Complete elliptic integrals by the arithmetic-geometric mean (Abramowitz and Stegun 17.6).</summary>
internal static class EllipticIntegral
{
    /// <summary>K and E.</summary>
    /// <param name="modulus">k, from 0 to below 1.</param>
    /// <returns>First and second kind.</returns>
    public static (double K, double E) Complete(double modulus)
    {
        double a = 1;
        double b = Math.Sqrt(1 - (modulus * modulus));
        double sum = 0.5 * modulus * modulus;
        double power = 0.5;
        while (Math.Abs(a - b) > 1e-15 * a)
        {
            double c = 0.5 * (a - b);
            (a, b) = (0.5 * (a + b), Math.Sqrt(a * b));
            power *= 2;
            sum += power * c * c;
        }

        double k = Math.PI / (2 * a);
        return (k, k * (1 - sum));
    }
}
