namespace Cavaxis.Circulation.Solver;

/// <summary>
/// Coefficients of the explicit Runge-Kutta pair of orders 5 and 4 with dense output of order 4 (Dormand and Prince 1980; dense
/// output as in Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, section II.6).
/// </summary>
internal static class DormandPrince
{
    public const int Stages = 7;

    public static readonly double[] Node = [0, 0.2, 0.3, 0.8, 8.0 / 9, 1, 1];

    public static readonly double[][] Weight =
    [
        [],
        [0.2],
        [3.0 / 40, 9.0 / 40],
        [44.0 / 45, -56.0 / 15, 32.0 / 9],
        [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
        [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
    ];

    /// <summary>Fifth minus fourth order result, for each stage.</summary>
    public static readonly double[] Error =
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40];

    private static readonly double[] Dense =
    [
        -12715105075.0 / 11282082432.0, 0, 87487479700.0 / 32700410799.0, -10690763975.0 / 1880347072.0,
        701980252875.0 / 199316789632.0, -1453857185.0 / 822651844.0, 69997945.0 / 29380423.0,
    ];

    /// <summary>Weights of the stages for the state at a share of the step: y(θ) = y₀ + h Σ bᵢ(θ) kᵢ.</summary>
    /// <param name="theta">Share of the step, 0 to 1.</param>
    /// <param name="weights">Seven weights.</param>
    public static void DenseWeights(double theta, Span<double> weights)
    {
        // Hairer's form y₀ + θ(Δ + (1−θ)(h k₁ − Δ + θ(2Δ − h(k₁ + k₇) + (1−θ) h Σ d k))) with Δ = h Σ b k, sorted by stage.
        double rest = 1 - theta;
        double[] b = Weight[6];
        double delta = theta - (theta * rest) + (2 * theta * theta * rest);
        double first = theta * rest;
        double second = theta * theta * rest;
        for (int i = 0; i < Stages; i++)
        {
            double end = i < 6 ? b[i] : 0;
            double w = (delta * end) + (second * rest * Dense[i]);
            w += i == 0 ? first - second : 0;
            w -= i == 6 ? second : 0;
            weights[i] = w;
        }
    }
}
