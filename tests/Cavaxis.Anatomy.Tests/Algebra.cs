using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;

namespace Cavaxis.Anatomy.Tests;

/// <summary>Plain elimination, kept apart from the engine so that it can check the engine.</summary>
internal static class Algebra
{
    /// <summary>Smallest pivot of the latent correlation matrix under elimination without exchange; positive exactly
    /// when it is positive definite.</summary>
    public static double SmallestPivot(AxisDistribution distribution)
    {
        int n = AxisDimensions.Count;
        double[,] a = new double[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                a[i, j] = distribution.Correlation((AxisDimension)i, (AxisDimension)j);
            }
        }

        double smallest = double.PositiveInfinity;
        for (int k = 0; k < n; k++)
        {
            smallest = Math.Min(smallest, a[k, k]);
            for (int i = k + 1; i < n; i++)
            {
                double ratio = a[i, k] / a[k, k];
                for (int j = k; j < n; j++)
                {
                    a[i, j] -= ratio * a[k, j];
                }
            }
        }

        return smallest;
    }
}
