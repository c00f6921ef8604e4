namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>Exponential of a small matrix by scaling and a Taylor series.</summary>
internal static class Matrix
{
    /// <summary>exp(A t) applied to a vector, in short stretches of each of which the series converges at once.</summary>
    public static double[] ExponentialTimes(double[,] a, double[] vector, double time)
    {
        const int stretches = 2000;
        double[] y = [.. vector];
        for (int s = 0; s < stretches; s++)
        {
            double[] term = [.. y];
            for (int order = 1; order <= 14; order++)
            {
                term = Product(a, term, time / stretches / order);
                y = [.. y.Select((v, i) => v + term[i])];
            }
        }

        return y;
    }

    private static double[] Product(double[,] a, double[] x, double factor) =>
        [.. Enumerable.Range(0, x.Length).Select(i => factor * x.Select((v, j) => a[i, j] * v).Sum())];
}
