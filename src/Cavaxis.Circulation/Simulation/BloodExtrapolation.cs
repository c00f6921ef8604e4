using Cavaxis.Circulation.Solver;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Anderson's extrapolation of volumes, flows and reflex of one patient over the last breaths: the combination of the states seen whose change
/// in a breath is least. Weights sum to one, so the blood volume is kept. It only shortens the way: whether a state is at rest is judged on the
/// breaths themselves.
/// </summary>
/// <param name="massRatio">Body mass over that of the adult.</param>
internal sealed class BloodExtrapolation(double massRatio)
{
    /// <summary>Quantities moved: all that come before the gas.</summary>
    public const int Dimension = S.Oxygen;

    private const int Depth = 6;
    private const double MostRelativeChange = 0.25;

    // A breath that changes this many times more than the one before has left the reach of the differences kept.
    private const double MostGrowth = 3;

    private readonly double[] size = [.. Enumerable.Range(0, Dimension).Select(i => Tolerance.SizeOf(i, massRatio) ?? 1)];
    private readonly List<(double[] Place, double[] Change)> steps = [];
    private double[]? lastPlace;
    private double[] lastChange = [];

    /// <summary>Where to start the next breath.</summary>
    /// <param name="before">State at the start of the breath.</param>
    /// <param name="after">State at its end; the extrapolation goes there.</param>
    /// <param name="noise">Error of a breath, in usual sizes: differences below it say nothing.</param>
    public void Apply(ReadOnlySpan<double> before, Span<double> after, double noise)
    {
        double[] place = new double[Dimension];
        double[] change = new double[Dimension];
        for (int i = 0; i < Dimension; i++)
        {
            // The scale is that of the first breath, so that changes of all breaths can be compared.
            size[i] = lastPlace is null ? Math.Max(size[i], Math.Abs(after[i])) : size[i];
            place[i] = before[i];
            change[i] = Follows(i) ? 0 : (after[i] - before[i]) / size[i];
        }

        Remember(place, change);
        if (steps.Count == 0)
        {
            return;
        }

        double[] weights = Weights(change, noise);
        double[] jump = new double[Dimension];
        for (int k = 0; k < steps.Count; k++)
        {
            for (int i = 0; i < Dimension; i++)
            {
                jump[i] -= Follows(i) ? 0 : weights[k] * (steps[k].Place[i] + (steps[k].Change[i] * size[i]));
            }
        }

        double share = 1;
        for (int i = 0; i < S.VolumeCount; i++)
        {
            double room = MostRelativeChange * Math.Abs(after[i]);
            share = Math.Abs(jump[i]) * share > room ? room / Math.Abs(jump[i]) : share;
        }

        for (int i = 0; i < Dimension; i++)
        {
            after[i] += share * jump[i];
        }
    }

    // Flows through valves and aorta forget within a beat: they follow the rest, and their error is left out.
    private static bool Follows(int index) => index is >= S.TricuspidFlow and < S.CircuitFlow;

    private void Remember(double[] place, double[] change)
    {
        if (lastPlace is { } previous)
        {
            if (Norm(change) > MostGrowth * Norm(lastChange))
            {
                steps.Clear();
            }

            steps.Add(([.. place.Select((p, i) => p - previous[i])], [.. change.Select((c, i) => c - lastChange[i])]));
            if (steps.Count > Depth)
            {
                steps.RemoveAt(0);
            }
        }

        (lastPlace, lastChange) = (place, change);
    }

    private double[] Weights(double[] change, double noise)
    {
        Matrix<double> slopes = DenseMatrix.OfColumnArrays(steps.Select(static s => s.Change));
        Matrix<double> normal = slopes.TransposeThisAndMultiply(slopes);
        double ridge = (Dimension * noise * noise) + (1e-12 * normal.Diagonal().Sum());
        for (int k = 0; k < steps.Count; k++)
        {
            normal[k, k] += ridge;
        }

        return normal.Cholesky().Solve(slopes.TransposeThisAndMultiply(new DenseVector(change))).ToArray();
    }

    private static double Norm(double[] change) => Math.Sqrt(change.Sum(static c => c * c));
}
