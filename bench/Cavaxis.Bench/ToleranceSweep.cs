namespace Cavaxis.Bench;

/// <summary>Error of a solver over its tolerance, and back: solvers are compared at equal error, and a tolerance means something else to each.</summary>
internal sealed class ToleranceSweep
{
    private const double Loosest = 1e-3;
    private const double Tightest = 1e-10;

    // Beyond this share of the least error asked for, the sweep ends.
    private const double Margin = 0.2;

    private readonly List<(double Tolerance, double Error)> points = [];

    /// <summary>Runs the solver from loose to tight until the error is well below what is asked for.</summary>
    /// <param name="leastTarget">Least error that will be asked for.</param>
    /// <param name="perDecade">Tolerances in a factor of ten.</param>
    /// <param name="error">Error of a run at a tolerance.</param>
    public ToleranceSweep(double leastTarget, int perDecade, Func<double, double> error)
    {
        for (int i = 0; ; i++)
        {
            double tolerance = Loosest * Math.Pow(10, -(double)i / perDecade);
            if (tolerance < Tightest)
            {
                return;
            }

            points.Add((tolerance, error(tolerance)));
            if (points[^1].Error < Margin * leastTarget)
            {
                return;
            }
        }
    }

    /// <summary>Tolerance at which the error is as asked for: seen from the tight end, where it first passes, straight in the logarithms.</summary>
    /// <param name="target">Error.</param>
    /// <returns>Tolerance; not a number where the sweep does not reach the error.</returns>
    public double At(double target)
    {
        for (int i = points.Count - 1; i > 0; i--)
        {
            (double tight, double low) = points[i];
            (double loose, double high) = points[i - 1];
            if (low <= target && high > target)
            {
                double share = (Math.Log(target) - Math.Log(low)) / (Math.Log(high) - Math.Log(low));
                return tight * Math.Pow(loose / tight, share);
            }
        }

        return points[^1].Error <= target ? Loosest : double.NaN;
    }
}
