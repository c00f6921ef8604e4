using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Solver;
using S = Cavaxis.Circulation.Equations.StateIndex;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Brings a row of patients to rest: breaths are run, first with larger steps and then with those asked for, and each starts where the breaths
/// before tell that rest is. Settled is what changes by less than the bound in a breath.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class RowSettler<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Usual spacing of samples, s.</summary>
    public const double SampleS = 0.01;

    /// <summary>Largest change in a breath, in usual sizes, of results that people see.</summary>
    public const double UsualBound = 5e-5;

    // The rough phase only has to come near: what it leaves over, the fine phase settles and judges.
    private const double RoughLoosening = 10;
    private const double RoughBound = 10;

    // A store that fills for ever changes by ever less of itself. So what is made and what is taken away must agree too, to this share.
    private const double MostImbalance = 0.02;
    private const double LongestRoughS = 120;
    private const double LongestFineS = 240;

    private readonly CirculationParameters[] patients;
    private readonly double[] massRatio;
    private readonly Tolerance tolerance;
    private readonly double bound;
    private readonly double[] change = new double[T.Count];
    private readonly double[] imbalance = new double[T.Count];
    private readonly int[] moving = new int[T.Count];
    private readonly bool[] rests = new bool[T.Count];
    private readonly double[] spent = new double[T.Count];

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
        CirculationEquations<T> equations = new(new ModelConstants<T>(patients));
        RestForecast<T> forecast = new(equations.Constants, massRatio);
        LaneIntegrator<T> rough = new(equations, massRatio, new Tolerance(RoughLoosening * tolerance.Relative));
        rough.SetState(Load(starts ?? [.. patients.Select(InitialState.Of)]));
        Breathe(rough, forecast, RoughLoosening * tolerance.Relative, LongestRoughS, RoughBound * bound, true);

        CirculationEquations<T> truth = new(equations.Constants);
        LaneIntegrator<T> fine = new(truth, massRatio, tolerance);
        fine.SetState(rough.State);
        Breathe(fine, forecast, tolerance.Relative, LongestFineS, bound, false);
        return Record(fine, truth);
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
    private void Breathe(LaneIntegrator<T> integrator, RestForecast<T> forecast, double error, double longestS, double most, bool rough)
    {
        T[] before = new T[S.Count];
        T[] next = new T[S.Count];
        BreathMeans<T> means = new(integrator.Equations);
        Array.Clear(rests);
        forecast.Begin();
        while (true)
        {
            integrator.State.CopyTo(before);
            means.Begin(before);
            integrator.RunBreath(forecast.Learns ? means : null, rests);
            for (int lane = 0; lane < T.Count; lane++)
            {
                Judge(before, integrator, forecast, lane, longestS, most, rough);
            }

            if (!rests.Contains(false))
            {
                break;
            }

            integrator.State.CopyTo(next);
            forecast.Apply(before, next, means, rests, error);
            KeepResting(integrator.State, next);
            integrator.SetState(next, rests);
        }

        for (int lane = 0; lane < T.Count; lane++)
        {
            spent[lane] += integrator.Time[lane];
        }
    }

    private void Judge(
        T[] before, LaneIntegrator<T> integrator, RestForecast<T> forecast, int lane, double longestS, double most, bool rough)
    {
        if (!rests[lane])
        {
            ReadOnlySpan<T> now = integrator.State;
            (double Change, int Index) volumes = LargestChange(before, now, lane, 0, S.VolumeCount);
            (double Change, int Index) flows = LargestChange(before, now, lane, S.VolumeCount, S.CircuitFlow);
            (double Change, int Index) controls = LargestChange(before, now, lane, S.CircuitFlow, S.Oxygen);
            (double Change, int Index) gas = LargestChange(before, now, lane, S.Oxygen, S.OxygenFromLungs);

            // Flows through valves and aorta follow within a beat. With large steps their own error would be taken for unrest.
            (double Change, int Index)[] judged = rough ? [volumes, controls, gas] : [volumes, flows, controls, gas];
            (change[lane], moving[lane]) = judged.MaxBy(static part => double.IsFinite(part.Change) ? part.Change : double.MaxValue);
            imbalance[lane] = Imbalance(before, now, lane);
            rests[lane] = (change[lane] < most && imbalance[lane] < MostImbalance) || integrator.Time[lane] > longestS || !double.IsFinite(change[lane]);
            forecast.Note(lane, rests[lane], volumes.Change, gas.Change);
        }
        else
        {
            forecast.Note(lane, true, 0, 0);
        }
    }

    private static double Imbalance(T[] before, ReadOnlySpan<T> now, int lane)
    {
        double made = now[S.CarbonDioxideProduced][lane] - before[S.CarbonDioxideProduced][lane];
        double taken = now[S.CarbonDioxideByLungs][lane] - before[S.CarbonDioxideByLungs][lane]
            + (now[S.CarbonDioxideByMembrane][lane] - before[S.CarbonDioxideByMembrane][lane]);
        return Math.Abs(made - taken) / made;
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

    private (double Change, int Index) LargestChange(T[] before, ReadOnlySpan<T> now, int lane, int from, int to)
    {
        (double worst, int index) = (0, 0);
        for (int i = from; i < to; i++)
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
        double[] open = [.. imbalance];
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
            bool settled = found[lane] < bound && open[lane] < MostImbalance;
            if (!settled)
            {
                bool moves = !(found[lane] < bound);
                string reason = moves ? StateWords.NotSettled(mover[lane], found[lane], spent[lane]) : StateWords.NotBalanced(open[lane], spent[lane]);
                results[lane] = new SettledState(patients[lane], null, null, null, reason, spent[lane])
                {
                    Moving = moves ? StateWords.Of(mover[lane]) : StateWords.CarbonDioxide,
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
