using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;

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
    private readonly RungeKuttaStages<T> stages;
    private readonly double[] step = new double[T.Count];
    private readonly double[] taken = new double[T.Count];
    private readonly double[] time = new double[T.Count];
    private readonly double[] before = new double[T.Count];
    private readonly double[] theta = new double[T.Count];
    private readonly BeatKeeper<T> beats;
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
        beats = new BeatKeeper<T>(equations);
        stages = new RungeKuttaStages<T>(massRatio, tolerance);
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
    public double LastBreath(int lane) => beats.LastBreath(lane);

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
                period[lane] = beats.Period(lane, y);
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
    public void Dense(ReadOnlySpan<double> share, Span<T> state) => stages.Dense(share, taken, y, state, Dimension);

    /// <summary>The same for the volumes and the reflex alone, which the pressures of heart and great vessels need.</summary>
    /// <param name="share">Share of the step, 0 to 1, of each patient.</param>
    /// <param name="state">Where the state goes.</param>
    public void DenseVolumes(ReadOnlySpan<double> share, Span<T> state) => stages.Dense(share, taken, y, state, StateIndex.Oxygen);

    /// <summary>One quantity of one patient inside the last step.</summary>
    /// <param name="lane">Patient.</param>
    /// <param name="index">Quantity.</param>
    /// <param name="share">Share of the step.</param>
    /// <returns>Its value.</returns>
    public double DenseAt(int lane, int index, double share)
    {
        return y[index][lane] + (taken[lane] * stages.DenseSum(lane, index, share));
    }

    private static T Load(double[] values) => T.Load(values);

    private void TakeStep(IStepWitness<T>? witness)
    {
        T h = Load(taken);
        T start = Load(time);
        if (!fresh)
        {
            Evaluate(start, y, stages.Rates[0]);
            fresh = true;
        }

        Stages(start, h);
        T worst = stages.ErrorNorm(h, next);
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
                    throw new StepTooSmallException(time[lane]);
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

        bool turned = beats.Turn(time, y);
        bool flipped = valves.Apply(y, theta, worst);
        fresh = !(anyRejected || flipped || turned || AnyPartial());
        if (fresh)
        {
            stages.LastBecomesFirst();
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

    private void Stages(T start, T h)
    {
        for (int s = 1; s < DormandPrince.Stages; s++)
        {
            T[] target = s == DormandPrince.Stages - 1 ? next : trial;
            stages.Argument(s, h, y, target);
            Evaluate(start + (T.Of(DormandPrince.Node[s]) * h), target, stages.Rates[s]);
        }
    }

    private void Evaluate(T at, T[] state, T[] rates)
    {
        evaluations++;
        equations.Rates(at, valves.Open, state, rates);
    }
}
