namespace Cavaxis.Anatomy.Conditioning;

/// <summary>The little dense algebra that a Gaussian of some thirty dimensions needs. Matrices are stored row by
/// row.</summary>
internal static class SymmetricMatrix
{
    /// <summary>Lower Cholesky factor of a positive definite matrix (Cholesky–Banachiewicz).</summary>
    /// <param name="matrix">The matrix; only its lower triangle is read.</param>
    /// <param name="n">Its size.</param>
    /// <returns>The factor with zeros above the diagonal.</returns>
    /// <exception cref="ArgumentException">The matrix is not positive definite.</exception>
    public static double[] Cholesky(ReadOnlySpan<double> matrix, int n)
    {
        double[] factor = new double[n * n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[(i * n) + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= factor[(i * n) + k] * factor[(j * n) + k];
                }

                if (i != j)
                {
                    factor[(i * n) + j] = sum / factor[(j * n) + j];
                }
                else if (sum > 0)
                {
                    factor[(i * n) + i] = Math.Sqrt(sum);
                }
                else
                {
                    throw new ArgumentException($"The matrix is not positive definite at row {i}.", nameof(matrix));
                }
            }
        }

        return factor;
    }

    /// <summary>Solves L y = b in place.</summary>
    public static void SolveLower(ReadOnlySpan<double> factor, Span<double> vector)
    {
        int n = vector.Length;
        for (int i = 0; i < n; i++)
        {
            double sum = vector[i];
            for (int k = 0; k < i; k++)
            {
                sum -= factor[(i * n) + k] * vector[k];
            }

            vector[i] = sum / factor[(i * n) + i];
        }
    }

    /// <summary>Solves Lᵀ x = y in place.</summary>
    public static void SolveUpper(ReadOnlySpan<double> factor, Span<double> vector)
    {
        int n = vector.Length;
        for (int i = n - 1; i >= 0; i--)
        {
            double sum = vector[i];
            for (int k = i + 1; k < n; k++)
            {
                sum -= factor[(k * n) + i] * vector[k];
            }

            vector[i] = sum / factor[(i * n) + i];
        }
    }
}
