using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.LinearAlgebra.Factorization;
using N = Cavaxis.Circulation.Equations.GasNode;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Where the amounts of gas and of returned blood will come to rest, told from one breath. With the mean flows of the breath the amounts x follow
/// dx/dt = A x + b. A breath of length τ then moves a distance e from rest to exp(Aτ) e, so the change r that was seen in the breath leaves
/// (exp(−Aτ) − 1)⁻¹ r to go. A comes from the gas equations by differences. It only shortens the way: whether a state is at rest is judged on the
/// breaths themselves.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class GasBalance<T>
    where T : unmanaged, ILane<T>
{
    private const double Stride = 1e-3;

    // A pool that nothing enters has no place of rest; this rate, per s, keeps its equation solvable. While blood itself is not at rest, what its change
    // does to contents hides slow rates, so the least rate is higher then.
    private const double LeastRate = 1e-5;
    private const double UnrestRate = 0.05;

    private static readonly int[] OxygenPlaces = [.. Enumerable.Range(S.Oxygen, N.Count), S.AlveolarOxygen];
    private static readonly int[] CarbonDioxidePlaces = [.. Enumerable.Range(S.CarbonDioxide, N.Count), S.AlveolarCarbonDioxide];
    private static readonly int[] ReturnedPlaces = [.. Enumerable.Range(S.Returned, AxisPorts.CellCount)];
    private static readonly int[][] Groups = [OxygenPlaces, CarbonDioxidePlaces, ReturnedPlaces];

    private readonly GasEquations<T> gas;
    private readonly FlowField<T> field = new();
    private readonly T[] mean = new T[S.Count];
    private readonly T[] plain = new T[S.Count];
    private readonly T[] moved = new T[S.Count];
    private readonly double[][] holding = [.. Enumerable.Range(0, T.Count).Select(_ => new double[S.Count])];
    private readonly LU<double>?[][] factors = [.. Groups.Select(_ => new LU<double>?[T.Count])];
    private readonly double[][][,] rates = [.. Enumerable.Range(0, T.Count).Select(_ => (double[][,])[.. Groups.Select(g => new double[g.Length, g.Length])])];

    /// <summary>Prepares.</summary>
    /// <param name="constants">Parameters.</param>
    public GasBalance(ModelConstants<T> constants) => gas = new GasEquations<T>(constants);

    /// <summary>True once a patient's balance is known.</summary>
    /// <param name="lane">Patient.</param>
    /// <returns>Whether it is.</returns>
    public bool Known(int lane) => factors[0][lane] is not null;

    /// <summary>Learns the balance of some patients from a breath.</summary>
    /// <param name="means">Means of the breath.</param>
    /// <param name="wanted">True for each patient whose balance is to be learnt; the others keep theirs.</param>
    /// <param name="unrest">Change of blood of each patient in the breath: rates slower than it are not told from it.</param>
    public void Learn(BreathMeans<T> means, ReadOnlySpan<bool> wanted, ReadOnlySpan<double> unrest)
    {
        for (int lane = 0; lane < T.Count; lane++)
        {
            foreach (double[,] part in rates[lane])
            {
                Array.Clear(part);
            }
        }

        // Transport is in proportion to each flow, so it adds over the two directions; what goes on without flow is in both and is taken out once.
        Add(means, 1, 1);
        Add(means, -1, 1);
        Add(means, 0, -1);
        for (int lane = 0; lane < T.Count; lane++)
        {
            if (!wanted[lane])
            {
                continue;
            }

            Hold(mean, lane, holding[lane]);
            for (int g = 0; g < Groups.Length; g++)
            {
                factors[g][lane] = Factor(rates[lane][g], means.Span[lane], LeastRate + (UnrestRate * Math.Min(1, unrest[lane])));
            }
        }
    }

    /// <summary>What is left to go after a breath, as a share of what each place holds.</summary>
    /// <param name="lane">Patient.</param>
    /// <param name="before">State at the start of the breath.</param>
    /// <param name="after">State at its end.</param>
    /// <param name="left">Change of content left to go, by place in the state; volumes are left alone.</param>
    public void Ahead(int lane, ReadOnlySpan<T> before, ReadOnlySpan<T> after, double[] left)
    {
        double[] first = new double[S.Count];
        double[] last = new double[S.Count];
        Hold(before, lane, first);
        Hold(after, lane, last);
        for (int g = 0; g < Groups.Length; g++)
        {
            int[] places = Groups[g];
            Vector<double> change = new DenseVector(places.Length);
            for (int j = 0; j < places.Length; j++)
            {
                int i = places[j];
                change[j] = ((after[i][lane] / last[i]) - (before[i][lane] / first[i])) * holding[lane][i];
            }

            Vector<double> rest = factors[g][lane]!.Solve(change);
            for (int j = 0; j < places.Length; j++)
            {
                left[places[j]] = rest[j] / holding[lane][places[j]];
            }
        }
    }

    /// <summary>Volume that holds each amount, at its place in the state; one for the gas of the lungs.</summary>
    /// <param name="y">State of the row.</param>
    /// <param name="lane">Patient.</param>
    /// <param name="volumes">Where the volumes go.</param>
    public void Hold(ReadOnlySpan<T> y, int lane, double[] volumes)
    {
        for (int n = 0; n < N.Count; n++)
        {
            (T blood, T store) = gas.Holding(n, y);
            double volume = Math.Max(blood[lane], 1e-3);
            volumes[S.Oxygen + n] = volume;
            volumes[S.CarbonDioxide + n] = volume + store[lane];
            if (n < AxisPorts.CellCount)
            {
                volumes[S.Returned + n] = volume;
            }
        }

        (volumes[S.AlveolarOxygen], volumes[S.AlveolarCarbonDioxide]) = (1, 1);
    }

    private static LU<double> Factor(double[,] rate, double length, double least)
    {
        Matrix<double> one = DenseMatrix.CreateIdentity(rate.GetLength(0));
        Matrix<double> x = (-length * DenseMatrix.OfArray(rate)) + (least * length * one);

        // exp(x) − 1 to the fourth order: slow modes are exact, and quick ones have nothing left to go either way.
        Matrix<double> sum = one + (x / 4);
        sum = one + (x / 3 * sum);
        sum = one + (x / 2 * sum);
        return (x * sum).LU();
    }

    private void Add(BreathMeans<T> means, int direction, double weight)
    {
        means.Fill(direction, mean, field);
        gas.Rates(mean, plain, field);
        for (int j = 0; j < OxygenPlaces.Length; j++)
        {
            // Oxygen is blind to the mark of returned blood and that to oxygen, so both move at once.
            Shift(j, OxygenPlaces, weight, j < ReturnedPlaces.Length);
        }

        for (int j = 0; j < CarbonDioxidePlaces.Length; j++)
        {
            Shift(j, CarbonDioxidePlaces, weight, false);
        }
    }

    private void Shift(int j, int[] places, double weight, bool returned)
    {
        (T y, T mark) = (mean[places[j]], returned ? mean[ReturnedPlaces[j]] : T.Of(0));
        T step = T.Max(T.Of(Stride) * T.Abs(y), T.Of(1e-4));
        mean[places[j]] = y + step;
        if (returned)
        {
            mean[ReturnedPlaces[j]] = mark + step;
        }

        gas.Rates(mean, moved, field);
        mean[places[j]] = y;
        Collect(j, places, places == OxygenPlaces ? 0 : 1, step, weight);
        if (returned)
        {
            mean[ReturnedPlaces[j]] = mark;
            Collect(j, ReturnedPlaces, 2, step, weight);
        }
    }

    private void Collect(int j, int[] places, int group, T step, double weight)
    {
        for (int i = 0; i < places.Length; i++)
        {
            T slope = T.Of(weight) * (moved[places[i]] - plain[places[i]]) / step;
            for (int lane = 0; lane < T.Count; lane++)
            {
                rates[lane][group][i, j] += slope[lane];
            }
        }
    }
}
