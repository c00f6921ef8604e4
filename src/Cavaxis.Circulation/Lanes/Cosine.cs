using System.Runtime.CompilerServices;

namespace Cavaxis.Circulation.Lanes;

/// <summary>
/// Cosine over one turn. The vector routines of the runtime take another way where all numbers of a row are small, so that a
/// patient's result would depend on its neighbours; here the same sums and products serve every number.
/// </summary>
internal static class Cosine
{
    // Taylor series of the sine: sin s = s(1 − s²/3! + s⁴/5! − …); the first term left out is below 1e-17 for |s| up to π/2.
    private static readonly double[] Series = Coefficients();

    /// <summary>Cosine.</summary>
    /// <typeparam name="T">One patient or a row of them.</typeparam>
    /// <param name="angle">Angle, 0 to 2π.</param>
    /// <returns>Its cosine, to a few units of the last place of one.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Of<T>(T angle)
        where T : unmanaged, ILane<T>
    {
        // cos x = 2 sin²((x − π)/2) − 1.
        T half = T.Of(0.5) * (angle - T.Of(Math.PI));
        T square = half * half;
        double[] series = Series;
        T sum = T.Of(series[^1]);
        for (int i = series.Length - 2; i >= 0; i--)
        {
            sum = T.Of(series[i]) + (square * sum);
        }

        T sine = half * sum;
        return (T.Of(2) * sine * sine) - T.Of(1);
    }

    private static double[] Coefficients()
    {
        double[] series = new double[12];
        double term = 1;
        for (int i = 0; i < series.Length; i++)
        {
            series[i] = term;
            term /= -(((2.0 * i) + 2) * ((2.0 * i) + 3));
        }

        return series;
    }
}
