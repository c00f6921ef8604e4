using System.Runtime.CompilerServices;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Solver;

/// <summary>
/// Adaptive Runge-Kutta integration of a row of patients, each with its own time, step and valves. Valve events are located on
/// the dense output and end the step there: the dense output is a linear combination of the stages, so every linear balance
/// (volume, gas) holds at the event as it does at a full step.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class LaneIntegrator<T>
    where T : unmanaged, ILane<T>
{
    private const double LongestStepS = 0.04;
    private const double ShortestStepS = 1e-7;
    private const int Dimension = StateIndex.Count;

    private readonly CirculationEquations<T> equations;
    private readonly ValveEvents<T> valves;
    private readonly T[] y = new T[Dimension];
    private readonly T[] next = new T[Dimension];
    private readonly T[] trial = new T[Dimension];
    private readonly T[][] k = [.. Enumerable.Range(0, DormandPrince.Stages).Select(_ => new T[Dimension])];
    private readonly T[] inverseScale = new T[Dimension];
    private readonly T[] sizes = new T[Dimension];
    private readonly double[] step = new double[T.Count];
    private readonly double[] taken = new double[T.Count];
    private readonly double[] time = new double[T.Count];
    private readonly double[] before = new double[T.Count];
    private readonly double[] theta = new double[T.Count];
    private readonly int[] beats = new int[T.Count];
    private readonly double[] lastBreath = new double[T.Count];
    private readonly double tolerance;
    private bool fresh;
    private long steps;
    private long rejected;
    private long evaluations;

    /// <summary>Prepares.</summary>
    /// <param name="equations">Equations with parameters.</param>
    /// <param name="massRatio">Body mass of each patient over that of the adult.</param>
    /// <param name="tolerance">Error allowed.</param>
    public LaneIntegrator(CirculationEquations<T> equations, ReadOnlySpan<double> massRatio, Tolerance tolerance)
    {
        this.equations = equations;
        valves = new ValveEvents<T>(equations);
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

        Array.Fill(step, 1e-3);
    }

    /// <summary>State of the row.</summary>
    public ReadOnlySpan<T> State => y;

    /// <summary>Time of each patient, s.</summary>
    public ReadOnlySpan<double> Time => time;

    /// <summary>What the run has cost so far.</summary>
    public SolverCounts Counts => new(steps, rejected, evaluations, valves.Count);

    /// <summary>The equations.</summary>
    public CirculationEquations<T> Equations => equations;

    /// <summary>Which one-way elements are open: one or zero for four valves and the circuit.</summary>
    public ReadOnlySpan<T> Open => valves.Open;

    /// <summary>Length of the last whole breath of a patient, s; zero before the first.</summary>
    /// <param name="lane">Patient.</param>
    /// <returns>Length, s.</returns>
    public double LastBreath(int lane) => lastBreath[lane];

    /// <summary>Integrates every patient to the end of its breath, each its own number of beats further.</summary>
    /// <param name="witness">Sees the steps; may be null.</param>
    /// <param name="rests">True for each patient that stays where it is; empty when all move.</param>
    public void RunBreath(IStepWitness<T>? witness = null, ReadOnlySpan<bool> rests = default)
    {
        BeatClock<T> clock = equations.Clock;
        Span<double> until = stackalloc double[T.Count];
        Span<double> from = stackalloc double[T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            from[lane] = clock.BreathStart[lane];
        }

        // The rate may change from beat to beat (reflex), so the end is known for certain only when it is there.
        bool busy = true;
        while (busy)
        {
            busy = false;
            for (int lane = 0; lane < T.Count; lane++)
            {
                bool breathes = clock.BreathStart[lane] == from[lane] && !(rests.Length > 0 && rests[lane]);
                until[lane] = breathes ? clock.BeatStart[lane] + clock.BeatPeriod[lane] : time[lane];
                busy |= breathes;
            }

            Run(until, witness);
        }
    }

    /// <summary>Sets the state of the row; valves that press open are opened.</summary>
    /// <param name="state">State.</param>
    /// <param name="rests">True for each patient whose valves stay as they are; empty when none do.</param>
    public void SetState(ReadOnlySpan<T> state, ReadOnlySpan<bool> rests = default)
    {
        state.CopyTo(y);
        fresh = false;
        if (steps == 0)
        {
            Span<double> period = stackalloc double[T.Count];
            for (int lane = 0; lane < T.Count; lane++)
            {
                period[lane] = Period(lane);
            }

            equations.Clock.SetBeat(Load(time), T.Load(period));
            equations.Clock.SetBreath(Load(time), T.Of(1));
        }

        valves.Reset(Load(time), y, rests);
    }

    /// <summary>Integrates every patient to its own end time.</summary>
    /// <param name="until">End time of each patient, s.</param>
    /// <param name="witness">Sees the steps; may be null.</param>
    /// <exception cref="StepTooSmallException">The equations cannot be solved at this tolerance.</exception>
    public void Run(ReadOnlySpan<double> until, IStepWitness<T>? witness = null)
    {
        while (true)
        {
            bool busy = false;
            for (int lane = 0; lane < T.Count; lane++)
            {
                double left = until[lane] - time[lane];
                taken[lane] = 0;
                if (left > 1e-12)
                {
                    busy = true;
                    double toBreak = equations.Clock.NextBreak(lane, time[lane]) - time[lane];
                    double limit = Math.Min(left, Math.Max(toBreak, 1e-12));
                    taken[lane] = Math.Min(Math.Min(step[lane], LongestStepS), limit);

                    // No sliver is left before a mark.
                    taken[lane] = taken[lane] < limit && limit - taken[lane] < 0.2 * taken[lane] ? 0.6 * limit : taken[lane];
                }
            }

            if (!busy)
            {
                return;
            }

            TakeStep(witness);
        }
    }

    /// <summary>Length of the step that the dense output spans.</summary>
    /// <param name="lane">Patient.</param>
    /// <returns>Length, s.</returns>
    public double StepLength(int lane) => taken[lane];

    /// <summary>State inside the last step, at a share of it of each patient's own.</summary>
    /// <param name="share">Share of the step, 0 to 1, of each patient.</param>
    /// <param name="state">Where the state goes.</param>
    public void Dense(ReadOnlySpan<double> share, Span<T> state) => Dense(share, state, Dimension);

    /// <summary>The same for the volumes and the reflex alone, which the pressures of heart and great vessels need.</summary>
    /// <param name="share">Share of the step, 0 to 1, of each patient.</param>
    /// <param name="state">Where the state goes.</param>
    public void DenseVolumes(ReadOnlySpan<double> share, Span<T> state) => Dense(share, state, StateIndex.Oxygen);

    /// <summary>One quantity of one patient inside the last step.</summary>
    /// <param name="lane">Patient.</param>
    /// <param name="index">Quantity.</param>
    /// <param name="share">Share of the step.</param>
    /// <returns>Its value.</returns>
    public double DenseAt(int lane, int index, double share)
    {
        Span<double> weights = stackalloc double[DormandPrince.Stages];
        DormandPrince.DenseWeights(share, weights);
        double sum = 0;
        for (int s = 0; s < DormandPrince.Stages; s++)
        {
            sum += weights[s] * k[s][index][lane];
        }

        return y[index][lane] + (taken[lane] * sum);
    }

    private void Dense(ReadOnlySpan<double> share, Span<T> state, int count)
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

    private static T Load(double[] values) => T.Load(values);

    private void TakeStep(IStepWitness<T>? witness)
    {
        T h = Load(taken);
        T start = Load(time);
        if (!fresh)
        {
            Evaluate(start, y, k[0]);
            fresh = true;
        }

        Stages(start, h);
        T worst = ErrorNorm(h);
        bool anyEvent = valves.Locate(this, y, next, time, taken, theta, worst);
        bool anyRejected = false;
        for (int lane = 0; lane < T.Count; lane++)
        {
            double error = worst[lane];
            before[lane] = time[lane];
            if (taken[lane] == 0)
            {
                theta[lane] = 0;
                continue;
            }

            bool good = error <= 1;
            double factor = good || double.IsFinite(error) ? 0.9 * Math.Pow(Math.Max(error, 1e-6), -0.2) : 0.1;
            step[lane] = taken[lane] * Math.Clamp(factor, 0.2, good ? 4 : 1);
            if (!good)
            {
                rejected++;
                anyRejected = true;
                theta[lane] = 0;
                if (step[lane] < ShortestStepS)
                {
                    throw new StepTooSmallException(time[lane], lane);
                }

                continue;
            }

            steps++;
            time[lane] += theta[lane] * taken[lane];
            step[lane] = theta[lane] < 1 ? Math.Min(step[lane], taken[lane]) : step[lane];
        }

        if (anyRejected || anyEvent || witness is not null)
        {
            Dense(theta, trial);
            TakeWholeSteps();
            witness?.Step(this, before, time);
            trial.CopyTo(y.AsSpan());
        }
        else
        {
            next.CopyTo(y.AsSpan());
        }

        bool turned = Beats();
        bool flipped = valves.Apply(y, theta, worst);
        fresh = !(anyRejected || flipped || turned || AnyPartial());
        if (fresh)
        {
            (k[0], k[6]) = (k[6], k[0]);
        }
    }

    /// <summary>A patient without an event ends on the step's own result to the last bit, whatever happened to its neighbours.</summary>
    private void TakeWholeSteps()
    {
        Span<double> row = stackalloc double[T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            row[lane] = theta[lane] == 1 ? 1 : 0;
        }

        T whole = T.Load(row);
        for (int i = 0; i < Dimension; i++)
        {
            trial[i] = T.IfPositive(whole, next[i], trial[i]);
        }
    }

    private bool AnyPartial()
    {
        for (int lane = 0; lane < T.Count; lane++)
        {
            if (theta[lane] < 1)
            {
                return true;
            }
        }

        return false;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Stages(T start, T h)
    {
        T[] k0 = k[0];
        for (int s = 1; s < DormandPrince.Stages; s++)
        {
            double[] a = DormandPrince.Weight[s];
            T[] target = s == 6 ? next : trial;
            T a0 = T.Of(a[0]) * h;
            switch (s)
            {
                case 1:
                    for (int i = 0; i < Dimension; i++)
                    {
                        target[i] = y[i] + (a0 * k0[i]);
                    }

                    break;
                case 2:
                    Combine(target, a0, T.Of(a[1]) * h, k[1]);
                    break;
                case 3:
                    Combine(target, a0, T.Of(a[1]) * h, k[1], T.Of(a[2]) * h, k[2]);
                    break;
                case 4:
                    Combine(target, a0, T.Of(a[1]) * h, k[1], T.Of(a[2]) * h, k[2]);
                    Add(target, T.Of(a[3]) * h, k[3]);
                    break;
                case 5:
                    Combine(target, a0, T.Of(a[1]) * h, k[1], T.Of(a[2]) * h, k[2]);
                    Add(target, T.Of(a[3]) * h, k[3], T.Of(a[4]) * h, k[4]);
                    break;
                default:
                    Combine(target, a0, T.Of(a[2]) * h, k[2], T.Of(a[3]) * h, k[3]);
                    Add(target, T.Of(a[4]) * h, k[4], T.Of(a[5]) * h, k[5]);
                    break;
            }

            Evaluate(start + (T.Of(DormandPrince.Node[s]) * h), target, k[s]);
        }
    }

    private void Combine(T[] target, T a0, T a1, T[] k1)
    {
        T[] k0 = k[0];
        for (int i = 0; i < Dimension; i++)
        {
            target[i] = y[i] + (a0 * k0[i]) + (a1 * k1[i]);
        }
    }

    private void Combine(T[] target, T a0, T a1, T[] k1, T a2, T[] k2)
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

    /// <summary>Largest weighted error of each patient: the worst quantity counts, not a mean that many quiet ones would dilute.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private T ErrorNorm(T h)
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

    private void Evaluate(T at, T[] state, T[] rates)
    {
        evaluations++;
        equations.Rates(at, valves.Open, state, rates);
    }

    private double Period(int lane) => 60
        / (equations.Constants[CirculationParameter.HeartRatePerMin][lane] * (1 + (ReflexGains.Rate * y[StateIndex.ReflexRate][lane])));

    /// <summary>Begins the next beat, and with it the next breath, of each patient whose beat is over.</summary>
    private bool Beats()
    {
        BeatClock<T> clock = equations.Clock;
        bool any = false;
        Span<double> start = stackalloc double[T.Count];
        Span<double> period = stackalloc double[T.Count];
        Span<double> breath = stackalloc double[T.Count];
        Span<double> begins = stackalloc double[T.Count];
        bool breathes = false;
        for (int lane = 0; lane < T.Count; lane++)
        {
            start[lane] = clock.BeatStart[lane];
            period[lane] = clock.BeatPeriod[lane];
            breath[lane] = clock.BreathStart[lane];
            begins[lane] = 0;
            if (time[lane] >= start[lane] + period[lane] - 1e-10)
            {
                any = true;
                start[lane] = time[lane];
                period[lane] = Period(lane);
                beats[lane]++;
                if (beats[lane] >= (int)clock.BeatsPerBreath[lane])
                {
                    beats[lane] = 0;
                    lastBreath[lane] = time[lane] - breath[lane];
                    breath[lane] = time[lane];
                    begins[lane] = 1;
                    breathes = true;
                }
            }
        }

        if (any)
        {
            clock.SetBeat(T.Load(start), T.Load(period));
            if (breathes)
            {
                clock.SetBreath(T.Load(breath), T.Load(begins));
            }
        }

        return any;
    }
}
