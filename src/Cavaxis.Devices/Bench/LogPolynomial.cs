namespace Cavaxis.Devices.Bench;

/// <summary>Least-squares polynomial of low order.</summary>
internal static class LogPolynomial
{
    /// <summary>Coefficients, lowest order first, of the least-squares polynomial.</summary>
    internal static double[] LeastSquares(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int order)
    {
        // The abscissa is shifted and scaled to about -1..1, where the normal equations of a cubic are well conditioned.
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (double value in x)
        {
            low = Math.Min(low, value);
            high = Math.Max(high, value);
        }

        double middle = 0.5 * (low + high);
        double half = 0.5 * (high - low);
        int n = order + 1;
        double[,] matrix = new double[n, n + 1];
        for (int i = 0; i < x.Length; i++)
        {
            double z = (x[i] - middle) / half;
            double row = 1;
            for (int r = 0; r < n; r++, row *= z)
            {
                double column = row;
                for (int c = 0; c < n; c++, column *= z)
                {
                    matrix[r, c] += column;
                }

                matrix[r, n] += row * y[i];
            }
        }

        return Unscaled(Solve(matrix), middle, half);
    }

    /// <summary>Value of a polynomial.</summary>
    internal static double At(ReadOnlySpan<double> coefficients, double x)
    {
        double value = 0;
        for (int i = coefficients.Length - 1; i >= 0; i--)
        {
            value = (value * x) + coefficients[i];
        }

        return value;
    }

    private static double[] Solve(double[,] matrix)
    {
        int n = matrix.GetLength(0);
        for (int pivot = 0; pivot < n; pivot++)
        {
            int best = pivot;
            for (int r = pivot + 1; r < n; r++)
            {
                best = Math.Abs(matrix[r, pivot]) > Math.Abs(matrix[best, pivot]) ? r : best;
            }

            for (int c = 0; c <= n; c++)
            {
                (matrix[pivot, c], matrix[best, c]) = (matrix[best, c], matrix[pivot, c]);
            }

            for (int r = pivot + 1; r < n; r++)
            {
                double factor = matrix[r, pivot] / matrix[pivot, pivot];
                for (int c = pivot; c <= n; c++)
                {
                    matrix[r, c] -= factor * matrix[pivot, c];
                }
            }
        }

        double[] solution = new double[n];
        for (int r = n - 1; r >= 0; r--)
        {
            double sum = matrix[r, n];
            for (int c = r + 1; c < n; c++)
            {
                sum -= matrix[r, c] * solution[c];
            }

            solution[r] = sum / matrix[r, r];
        }

        return solution;
    }

    private static double[] Unscaled(double[] scaled, double middle, double half)
    {
        // Horner's scheme on polynomials: multiply by (x - middle)/half and add the next coefficient.
        double[] result = new double[scaled.Length];
        for (int i = scaled.Length - 1; i >= 0; i--)
        {
            for (int k = scaled.Length - 1; k >= 0; k--)
            {
                result[k] = ((k > 0 ? result[k - 1] : 0) - (middle * result[k])) / half;
            }

            result[0] += scaled[i];
        }

        return result;
    }
}
