using System.Runtime.CompilerServices;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Solver;

/// <summary>The stages of a Runge-Kutta step of a row of patients: arguments, error and dense output are linear combinations of them.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class RungeKuttaStages<T>
    where T : unmanaged, ILane<T>
{
    private const int Dimension = StateIndex.Count;
    private readonly T[][] k = [.. Enumerable.Range(0, DormandPrince.Stages).Select(_ => new T[Dimension])];
    private readonly T[] sizes = new T[Dimension];
    private readonly double tolerance;

    /// <summary>Prepares.</summary>
    /// <param name="massRatio">Body mass of each patient over that of the adult.</param>
    /// <param name="tolerance">Error allowed.</param>
    public RungeKuttaStages(ReadOnlySpan<double> massRatio, Tolerance tolerance)
    {
        this.tolerance = tolerance.Relative;
        Span<double> row = stackalloc double[T.Count];
        for (int i = 0; i < Dimension; i++)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                row[lane] = Tolerance.SizeOf(i, massRatio[lane]) ?? double.PositiveInfinity;
            }

            sizes[i] = T.Load(row);
        }
    }

    /// <summary>Rates of each stage.</summary>
    public T[][] Rates => k;

    /// <summary>The rates at the end of a whole step are those at the start of the next.</summary>
    public void LastBecomesFirst() => (k[0], k[6]) = (k[6], k[0]);

    /// <summary>State at which a stage is evaluated.</summary>
    /// <param name="stage">Stage, from one on.</param>
    /// <param name="h">Step of each patient, s.</param>
    /// <param name="y">State at the start of the step.</param>
    /// <param name="target">Where the state goes.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Argument(int stage, T h, T[] y, T[] target)
    {
        T[] k0 = k[0];
        double[] a = DormandPrince.Weight[stage];
        T a0 = T.Of(a[0]) * h;
        switch (stage)
        {
            case 1:
                for (int i = 0; i < Dimension; i++)
                {
                    target[i] = y[i] + (a0 * k0[i]);
                }

                break;
            case 2:
                Combine(y, target, a0, T.Of(a[1]) * h, k[1]);
                break;
            case 3:
                Combine(y, target, a0, T.Of(a[1]) * h, k[1], T.Of(a[2]) * h, k[2]);
                break;
            case 4:
                Combine(y, target, a0, T.Of(a[1]) * h, k[1], T.Of(a[2]) * h, k[2]);
                Add(target, T.Of(a[3]) * h, k[3]);
                break;
            case 5:
                Combine(y, target, a0, T.Of(a[1]) * h, k[1], T.Of(a[2]) * h, k[2]);
                Add(target, T.Of(a[3]) * h, k[3], T.Of(a[4]) * h, k[4]);
                break;
            default:
                Combine(y, target, a0, T.Of(a[2]) * h, k[2], T.Of(a[3]) * h, k[3]);
                Add(target, T.Of(a[4]) * h, k[4], T.Of(a[5]) * h, k[5]);
                break;
        }
    }

    /// <summary>Largest weighted error of each patient: the worst quantity counts, not a mean that many quiet ones would dilute.</summary>
    /// <param name="h">Step of each patient, s.</param>
    /// <param name="next">State at the end of the step.</param>
    /// <returns>Error over what is allowed.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public T ErrorNorm(T h, T[] next)
    {
        double[] e = DormandPrince.Error;
        (T e0, T e2, T e3, T e4, T e5, T e6) = (T.Of(e[0]) * h, T.Of(e[2]) * h, T.Of(e[3]) * h, T.Of(e[4]) * h, T.Of(e[5]) * h, T.Of(e[6]) * h);
        T worst = T.Of(0);
        T bound = T.Of(1 / tolerance);
        for (int i = 0; i < StateIndex.OxygenFromLungs; i++)
        {
            T error = (e0 * k[0][i]) + (e2 * k[2][i]) + (e3 * k[3][i]) + (e4 * k[4][i]) + (e5 * k[5][i]) + (e6 * k[6][i]);
            worst = T.Max(worst, T.Abs(error) / T.Max(sizes[i], T.Abs(next[i])));
        }

        return worst * bound;
    }

    /// <summary>State inside the step at a share of it of each patient's own.</summary>
    /// <param name="share">Share of the step, 0 to 1, of each patient.</param>
    /// <param name="taken">Length of the step of each patient, s.</param>
    /// <param name="y">State at its start.</param>
    /// <param name="state">Where the state goes.</param>
    /// <param name="count">How many quantities are wanted, from the first on.</param>
    public void Dense(ReadOnlySpan<double> share, double[] taken, T[] y, Span<T> state, int count)
    {
        Span<double> weights = stackalloc double[DormandPrince.Stages];
        Span<double> lanes = stackalloc double[DormandPrince.Stages * T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            DormandPrince.DenseWeights(share[lane], weights);
            for (int s = 0; s < DormandPrince.Stages; s++)
            {
                lanes[(s * T.Count) + lane] = share[lane] == 0 ? 0 : weights[s] * taken[lane];
            }
        }

        Span<T> w = stackalloc T[DormandPrince.Stages];
        for (int s = 0; s < DormandPrince.Stages; s++)
        {
            w[s] = T.Load(lanes.Slice(s * T.Count, T.Count));
        }

        // A patient that stays where it is keeps its state even where a rejected stage is not a number.
        T moves = T.Load(share);
        for (int i = 0; i < count; i++)
        {
            T moved = y[i] + (w[0] * k[0][i]) + (w[2] * k[2][i]) + (w[3] * k[3][i]) + (w[4] * k[4][i]) + (w[5] * k[5][i]) + (w[6] * k[6][i]);
            state[i] = T.IfPositive(moves, moved, y[i]);
        }
    }

    /// <summary>Weighted sum of the rates of one quantity of one patient at a share of the step.</summary>
    /// <param name="lane">Patient.</param>
    /// <param name="index">Quantity.</param>
    /// <param name="share">Share of the step.</param>
    /// <returns>Change for each second of step.</returns>
    public double DenseSum(int lane, int index, double share)
    {
        Span<double> weights = stackalloc double[DormandPrince.Stages];
        DormandPrince.DenseWeights(share, weights);
        double sum = 0;
        for (int s = 0; s < DormandPrince.Stages; s++)
        {
            sum += weights[s] * k[s][index][lane];
        }

        return sum;
    }

    private void Combine(T[] y, T[] target, T a0, T a1, T[] k1)
    {
        T[] k0 = k[0];
        for (int i = 0; i < Dimension; i++)
        {
            target[i] = y[i] + (a0 * k0[i]) + (a1 * k1[i]);
        }
    }

    private void Combine(T[] y, T[] target, T a0, T a1, T[] k1, T a2, T[] k2)
    {
        T[] k0 = k[0];
        for (int i = 0; i < Dimension; i++)
        {
            target[i] = y[i] + (a0 * k0[i]) + (a1 * k1[i]) + (a2 * k2[i]);
        }
    }

    private static void Add(T[] target, T a, T[] x)
    {
        for (int i = 0; i < Dimension; i++)
        {
            target[i] += a * x[i];
        }
    }

    private static void Add(T[] target, T a, T[] x, T b, T[] z)
    {
        for (int i = 0; i < Dimension; i++)
        {
            target[i] += (a * x[i]) + (b * z[i]);
        }
    }
}
