using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Solver;
using static Cavaxis.Circulation.Parameters.CirculationParameter;
using N = Cavaxis.Circulation.Equations.GasNode;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Brings a row of patients to rest. First the slow stores of gas are held as if they were small, which changes the way but not the goal;
/// then with true volumes until a breath repeats the one before.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class RowSettler<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Usual spacing of samples, s.</summary>
    public const double SampleS = 0.01;

    /// <summary>Largest change in a breath, in usual sizes, of results that people see.</summary>
    public const double UsualBound = 5e-5;

    private const double CompressedMl = 60;
    private const int CarbonDioxideBreaths = 6;
    private const double RoughBalance = 0.02;

    // The rough phase only has to come near: what it leaves over, the fine phase settles and judges.
    private const double RoughLoosening = 10;
    private const double RoughBound = 10;
    private const double MostAfterJump = 2;
    private const double LongestRoughS = 160;
    private const double LongestFineS = 240;

    private readonly CirculationParameters[] patients;
    private readonly double[] massRatio;
    private readonly Tolerance tolerance;
    private readonly double bound;
    private readonly double[] change = new double[T.Count];
    private readonly int[] moving = new int[T.Count];
    private readonly bool[] rests = new bool[T.Count];
    private readonly bool[] barred = new bool[T.Count];
    private readonly double[] beforeJump = new double[T.Count];
    private readonly double[] spent = new double[T.Count];
    private readonly T[] squeeze = new T[N.Count];

    /// <summary>Prepares.</summary>
    /// <param name="patients">One set of parameters for each lane.</param>
    /// <param name="tolerance">Error allowed.</param>
    /// <param name="bound">Largest change in a breath, in usual sizes, of a settled circulation.</param>
    public RowSettler(CirculationParameters[] patients, Tolerance tolerance, double bound = UsualBound)
    {
        this.bound = bound;
        this.patients = patients;
        this.tolerance = tolerance;
        massRatio = [.. patients.Select(p => p.MassKg / ParameterTable.ReferenceMassKg)];
    }

    /// <summary>Runs until every patient has settled or time is up.</summary>
    /// <param name="starts">Where each patient starts; null for a plausible state.</param>
    /// <returns>One result for each patient.</returns>
    public SettledState[] Run(IReadOnlyList<double[]>? starts = null)
    {
        CirculationEquations<T> quick = new(new ModelConstants<T>([.. patients.Select(Quick)]));
        T[] y = Load(starts ?? [.. patients.Select(InitialState.Of)]);
        CirculationEquations<T> truth = new(new ModelConstants<T>(patients));
        T[] rates = new T[S.Count];
        T[] closed = new T[ValveEvents<T>.Elements];
        truth.Rates(T.Of(0), closed, y, rates);
        Compress(quick, y);
        InitialState.Refill(truth, quick, y);
        Squeeze(y);
        LaneIntegrator<T> rough = new(quick, massRatio, new Tolerance(RoughLoosening * tolerance.Relative));
        rough.SetState(y);
        Breathe(rough, LongestRoughS, 2, jumps: true, RoughBound * bound);

        MeanContents<T> means = new(quick);
        rough.RunBreath(means);
        rough.State.CopyTo(y);
        quick.Rates(T.Load(rough.Time), rough.Open, y, rates);
        InitialState.Refill(quick, truth, y);
        means.Fill(truth, truth.Constants[LungGasVolumeMl] / quick.Constants[LungGasVolumeMl], y);
        LaneIntegrator<T> fine = new(truth, massRatio, tolerance);
        fine.SetState(y);
        Breathe(fine, LongestFineS, 1, jumps: false, bound);
        return Record(fine, truth);
    }

    private static CirculationParameters Quick(CirculationParameters p)
    {
        double ratio = p.MassKg / ParameterTable.ReferenceMassKg;
        return p.With(TissueCarbonDioxideMl, 0)
            .With(LungGasVolumeMl, Math.Min(p[LungGasVolumeMl], 800 * ratio))
            .With(DrainageLineMl, Math.Min(p[DrainageLineMl], 30 * ratio))
            .With(MembraneLungMl, Math.Min(p[MembraneLungMl], 30 * ratio))
            .With(ReturnLineMl, Math.Min(p[ReturnLineMl], 30 * ratio));
    }

    private void Compress(CirculationEquations<T> quick, T[] y)
    {
        Array.Fill(squeeze, T.Of(1));
        T most = T.Of(CompressedMl) * T.Load(massRatio);
        for (int n = N.PulmonaryVein; n <= N.LowerVein; n++)
        {
            (T blood, _) = quick.Gas.Holding(n, y);
            squeeze[n] = T.Min(T.Of(1), most / T.Max(blood, T.Of(1e-3)));
        }

        quick.Gas.Compress(squeeze);
    }

    private void Squeeze(T[] y)
    {
        for (int n = 0; n < N.Count; n++)
        {
            y[S.Oxygen + n] *= squeeze[n];
            y[S.CarbonDioxide + n] *= squeeze[n];
        }
    }

    private static T[] Load(IReadOnlyList<double[]> states)
    {
        T[] y = new T[S.Count];
        Span<double> row = stackalloc double[T.Count];
        for (int i = 0; i < S.Count; i++)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                row[lane] = states[lane][i];
            }

            y[i] = T.Load(row);
        }

        return y;
    }

    /// <summary>
    /// Runs whole breaths until nothing changes by more than the bound in a breath, or the longest time is over. A patient that is
    /// done rests while its neighbours go on, so that its result is the one it has alone.
    /// </summary>
    private void Breathe(LaneIntegrator<T> integrator, double longestS, int stride, bool jumps, double most)
    {
        T[] first = new T[S.Count];
        T[] second = new T[S.Count];
        T[] third = new T[S.Count];
        Array.Clear(rests);
        Array.Clear(barred);
        Array.Fill(beforeJump, double.PositiveInfinity);
        for (int round = 1; ; round++)
        {
            second.CopyTo(first.AsSpan());
            integrator.State.CopyTo(second);
            for (int i = 0; i < stride; i++)
            {
                integrator.RunBreath(null, rests);
            }

            Judge(second, integrator, longestS, stride, most);
            if (!rests.Contains(false))
            {
                break;
            }

            integrator.State.CopyTo(third);
            if (round % (jumps ? 3 : 5) == 0)
            {
                change.CopyTo(beforeJump, 0);
                SlowModeJump<T>.Apply(first, second, third, barred);
            }

            if (round % (jumps ? 4 : CarbonDioxideBreaths) == 0)
            {
                CarbonDioxideBalance<T>.Apply(integrator.Equations.Constants, second, third, jumps ? RoughBalance : 0);
            }

            KeepResting(integrator.State, third);
            integrator.SetState(third, rests);
        }

        for (int lane = 0; lane < T.Count; lane++)
        {
            spent[lane] += integrator.Time[lane];
        }
    }

    private void Judge(T[] before, LaneIntegrator<T> integrator, double longestS, int stride, double most)
    {
        for (int lane = 0; lane < T.Count; lane++)
        {
            if (rests[lane])
            {
                continue;
            }

            (change[lane], moving[lane]) = LargestChange(before, integrator.State, lane);
            change[lane] /= stride;

            // A jump that leaves more to do than there was has met more than one mode: no more of them for this patient.
            barred[lane] |= change[lane] > MostAfterJump * beforeJump[lane];
            rests[lane] = change[lane] < most || integrator.Time[lane] > longestS || !double.IsFinite(change[lane]);
        }
    }

    private void KeepResting(ReadOnlySpan<T> state, T[] moved)
    {
        Span<double> row = stackalloc double[T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            row[lane] = rests[lane] ? 1 : 0;
        }

        T kept = T.Load(row);
        for (int i = 0; i < S.Count; i++)
        {
            moved[i] = T.IfPositive(kept, state[i], moved[i]);
        }
    }

    private (double Change, int Index) LargestChange(T[] before, ReadOnlySpan<T> now, int lane)
    {
        (double worst, int index) = (0, 0);
        for (int i = 0; i < S.OxygenFromLungs; i++)
        {
            if (Tolerance.SizeOf(i, massRatio[lane]) is not { } size)
            {
                continue;
            }

            double scale = Math.Max(size, Math.Abs(now[i][lane]));
            double moved = Math.Abs(now[i][lane] - before[i][lane]) / scale;
            if (!(moved <= worst))
            {
                (worst, index) = (moved, i);
            }
        }

        return (worst, index);
    }

    private SettledState[] Record(LaneIntegrator<T> integrator, CirculationEquations<T> truth)
    {
        double[] start = new double[T.Count];
        double[] spacing = new double[T.Count];
        int[] counts = new int[T.Count];
        double[] until = new double[T.Count];
        double[][] states = new double[T.Count][];
        double[] found = [.. change];
        int[] mover = [.. moving];
        for (int lane = 0; lane < T.Count; lane++)
        {
            start[lane] = integrator.Time[lane];
            double period = integrator.LastBreath(lane);
            int beats = (int)truth.Clock.BeatsPerBreath[lane];
            counts[lane] = beats * Math.Max(16, (int)Math.Round(period / beats / SampleS));
            spacing[lane] = period / counts[lane];
            until[lane] = start[lane] + period;
            states[lane] = new double[S.Count];
            for (int i = 0; i < S.Count; i++)
            {
                states[lane][i] = integrator.State[i][lane];
            }
        }

        BreathSampler<T> sampler = new(truth, start, spacing, counts);
        integrator.Run(until, sampler);
        SettledState[] results = new SettledState[T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            bool settled = found[lane] < bound && double.IsFinite(found[lane]);
            if (!settled)
            {
                results[lane] = new SettledState(patients[lane], null, null, null, StateWords.NotSettled(mover[lane], found[lane], spent[lane]), spent[lane])
                {
                    Moving = StateWords.Of(mover[lane]),
                };
                continue;
            }

            BreathRecord breath = new(sampler.Samples[lane], until[lane] - start[lane], (int)truth.Clock.BeatsPerBreath[lane]);
            double Gain(int index) => integrator.State[index][lane] - states[lane][index];
            CirculationSummary summary = CirculationSummary.Of(
                patients[lane], breath, (Gain(S.OxygenFromLungs), Gain(S.OxygenFromMembrane), Gain(S.OxygenConsumed)));
            results[lane] = new SettledState(patients[lane], breath, summary, states[lane], string.Empty, spent[lane]);
        }

        return results;
    }
}
