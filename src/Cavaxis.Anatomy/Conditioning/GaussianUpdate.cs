namespace Cavaxis.Anatomy.Conditioning;

/// <summary>
/// Conditions a Gaussian on all observations at once: x* = m + P Hᵀ (H P Hᵀ + R)⁻¹ (y − h(x*) + H (x* − m)), iterated to its
/// fixed point (the iterated extended Kalman update, which is Gauss–Newton for the most probable point), and
/// P* = P − P Hᵀ (H P Hᵀ + R)⁻¹ H P. Linear observations settle in one step and give the exact posterior.
/// </summary>
internal static class GaussianUpdate
{
    private const int MostSteps = 100;
    private const double StepTolerance = 1e-12;
    private const double ShortestStep = 1e-6;
    private const double ObjectiveRounding = 1e-12;

    /// <summary>Mean and covariance after the observations.</summary>
    public static (double[] Mean, double[] Covariance) Condition(
        ReadOnlySpan<double> mean, ReadOnlySpan<double> covariance, IReadOnlyList<AxisObservation> observations)
    {
        int n = mean.Length;
        double[] weights = new double[n];
        double[] point = mean.ToArray();
        for (int step = 0; step < MostSteps; step++)
        {
            Linearisation at = new(mean, covariance, point, observations);
            double[] target = at.WeightsAtOptimum();
            double length = 1;
            double[] tried = Blend(weights, target, length);
            double[] next = At(mean, covariance, tried);
            double before = at.IsLinear ? 0 : Objective(mean, point, weights, observations);
            while (!at.IsLinear
                && length > ShortestStep
                && Objective(mean, next, tried, observations) > before * (1 + ObjectiveRounding))
            {
                length /= 2;
                tried = Blend(weights, target, length);
                next = At(mean, covariance, tried);
            }

            double largest = 0;
            for (int i = 0; i < n; i++)
            {
                largest = Math.Max(largest, Math.Abs(next[i] - point[i]) / Math.Sqrt(covariance[(i * n) + i]));
            }

            weights = tried;
            point = next;
            if (at.IsLinear || largest < StepTolerance)
            {
                break;
            }
        }

        return (point, new Linearisation(mean, covariance, point, observations).PosteriorCovariance());
    }

    // Points are kept as m + P w: the prior's quadratic form is then wᵀ P w and no inverse is needed.
    private static double[] At(ReadOnlySpan<double> mean, ReadOnlySpan<double> covariance, double[] weights)
    {
        int n = mean.Length;
        double[] point = mean.ToArray();
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                point[i] += covariance[(i * n) + j] * weights[j];
            }
        }

        return point;
    }

    private static double[] Blend(double[] from, double[] to, double length)
    {
        double[] result = new double[from.Length];
        for (int i = 0; i < from.Length; i++)
        {
            result[i] = from[i] + (length * (to[i] - from[i]));
        }

        return result;
    }

    private static double Objective(
        ReadOnlySpan<double> mean, double[] point, double[] weights, IReadOnlyList<AxisObservation> observations)
    {
        double sum = 0;
        for (int i = 0; i < point.Length; i++)
        {
            sum += (point[i] - mean[i]) * weights[i];
        }

        Span<double> gradient = new double[point.Length];
        foreach (AxisObservation observation in observations)
        {
            double residual = observation.Target - observation.Predict(point, gradient);
            sum += residual * residual / observation.Variance;
        }

        return sum;
    }

    private sealed class Linearisation
    {
        private readonly int n;
        private readonly int m;
        private readonly double[] gradients;
        private readonly double[] gains;
        private readonly double[] factor;
        private readonly double[] residuals;
        private readonly double[] prior;

        public Linearisation(
            ReadOnlySpan<double> mean, ReadOnlySpan<double> covariance, double[] point, IReadOnlyList<AxisObservation> observations)
        {
            (n, m) = (mean.Length, observations.Count);
            gradients = new double[m * n];
            gains = new double[m * n];
            residuals = new double[m];
            prior = covariance.ToArray();
            double[] innovation = new double[m * m];
            IsLinear = true;
            for (int k = 0; k < m; k++)
            {
                Span<double> gradient = gradients.AsSpan(k * n, n);
                IsLinear &= observations[k].IsLinear;
                residuals[k] = observations[k].Target - observations[k].Predict(point, gradient);
                for (int i = 0; i < n; i++)
                {
                    residuals[k] += gradient[i] * (point[i] - mean[i]);
                    for (int j = 0; j < n; j++)
                    {
                        gains[(k * n) + i] += covariance[(i * n) + j] * gradient[j];
                    }
                }
            }

            for (int k = 0; k < m; k++)
            {
                for (int l = 0; l <= k; l++)
                {
                    double sum = k == l ? observations[k].Variance : 0;
                    for (int i = 0; i < n; i++)
                    {
                        sum += gradients[(k * n) + i] * gains[(l * n) + i];
                    }

                    innovation[(k * m) + l] = sum;
                }
            }

            factor = SymmetricMatrix.Cholesky(innovation, m);
        }

        public bool IsLinear { get; }

        /// <summary>w with x = m + P w at the optimum of the linearised problem: w = Hᵀ S⁻¹ d.</summary>
        public double[] WeightsAtOptimum()
        {
            double[] solved = [.. residuals];
            SymmetricMatrix.SolveLower(factor, solved);
            SymmetricMatrix.SolveUpper(factor, solved);
            double[] weights = new double[n];
            for (int k = 0; k < m; k++)
            {
                for (int i = 0; i < n; i++)
                {
                    weights[i] += gradients[(k * n) + i] * solved[k];
                }
            }

            return weights;
        }

        /// <summary>P − VᵀV with V = L⁻¹ H P and L Lᵀ = S: symmetric by construction and never wider than P.</summary>
        public double[] PosteriorCovariance()
        {
            double[] reduced = [.. gains];
            double[] column = new double[m];
            for (int i = 0; i < n; i++)
            {
                for (int k = 0; k < m; k++)
                {
                    column[k] = gains[(k * n) + i];
                }

                SymmetricMatrix.SolveLower(factor, column);
                for (int k = 0; k < m; k++)
                {
                    reduced[(k * n) + i] = column[k];
                }
            }

            double[] posterior = [.. prior];
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    for (int k = 0; k < m; k++)
                    {
                        posterior[(i * n) + j] -= reduced[(k * n) + i] * reduced[(k * n) + j];
                    }
                }
            }

            return posterior;
        }
    }
}
