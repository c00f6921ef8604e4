using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;

namespace Cavaxis.Circulation.Solver;

/// <summary>
/// Opening and closing of the one-way elements: four valves and the circuit. An open one closes when its flow has fallen to zero;
/// a closed one opens when the pressure across it turns forward.
/// </summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class ValveEvents<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Number of one-way elements.</summary>
    public const int Elements = 5;

    private const double ThetaTolerance = 1e-7;
    private const int MostIterations = 12;
    private static readonly int[] FlowOf =
        [StateIndex.TricuspidFlow, StateIndex.PulmonaryValveFlow, StateIndex.MitralFlow, StateIndex.AorticValveFlow, StateIndex.CircuitFlow];

    private readonly CirculationEquations<T> equations;
    private readonly T[] open = new T[Elements];
    private readonly T[] volumes = new T[StateIndex.Count];
    private readonly bool[] flips = new bool[Elements * T.Count];
    private readonly double[] low = new double[T.Count];
    private readonly double[] high = new double[T.Count];
    private readonly double[] atLow = new double[T.Count];
    private readonly double[] atHigh = new double[T.Count];
    private readonly int[] side = new int[T.Count];
    private readonly double[] guess = new double[T.Count];
    private readonly bool[] seeks = new bool[T.Count];

    /// <summary>Prepares.</summary>
    /// <param name="equations">The equations.</param>
    public ValveEvents(CirculationEquations<T> equations) => this.equations = equations;

    /// <summary>One for each open element, zero for each closed one.</summary>
    public ReadOnlySpan<T> Open => open;

    /// <summary>Events located so far.</summary>
    public long Count { get; private set; }

    /// <summary>Opens what carries flow or is pressed open, closes the rest.</summary>
    /// <param name="time">Time of each patient.</param>
    /// <param name="y">State.</param>
    /// <param name="rests">True for each patient whose valves stay as they are; empty when none do.</param>
    public void Reset(T time, T[] y, ReadOnlySpan<bool> rests)
    {
        T[] rates = new T[StateIndex.Count];
        equations.Rates(time, open, y, rates);
        Span<double> row = stackalloc double[T.Count];
        for (int v = 0; v < Elements; v++)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                bool presses = y[FlowOf[v]][lane] > 0 || equations.Field.Opening[v][lane] > 0;
                row[lane] = rests.Length > 0 && rests[lane] ? open[v][lane] : presses ? 1 : 0;
            }

            open[v] = T.Load(row);
            y[FlowOf[v]] = T.IfPositive(open[v], y[FlowOf[v]], T.Of(0));
        }
    }

    /// <summary>Finds the first event of each patient inside an accepted step.</summary>
    /// <param name="integrator">Offers the dense output.</param>
    /// <param name="start">State at the start of the step.</param>
    /// <param name="end">State at its end; the equations were last evaluated there.</param>
    /// <param name="time">Start of the step of each patient.</param>
    /// <param name="taken">Length of the step of each patient.</param>
    /// <param name="theta">Share of the step up to the event; one where there is none.</param>
    /// <param name="error">Error of the step over what is allowed.</param>
    /// <returns>True when any patient has an event.</returns>
    public bool Locate(LaneIntegrator<T> integrator, T[] start, T[] end, double[] time, double[] taken, double[] theta, T error)
    {
        bool any = false;
        bool opens = false;
        Array.Clear(flips);
        Array.Fill(theta, 1);
        for (int lane = 0; lane < T.Count; lane++)
        {
            seeks[lane] = false;
            if (taken[lane] == 0 || !(error[lane] <= 1))
            {
                continue;
            }

            for (int v = 0; v < Elements; v++)
            {
                bool isOpen = open[v][lane] > 0;
                if (isOpen && end[FlowOf[v]][lane] < 0)
                {
                    double at = ClosingTime(integrator, lane, FlowOf[v], start[FlowOf[v]][lane], end[FlowOf[v]][lane]);
                    Earliest(theta, lane, v, at);
                    any = true;
                }
                else if (!isOpen && equations.Field.Opening[v][lane] > 0)
                {
                    any = true;
                    if (v == Elements - 1)
                    {
                        // A circuit that starts to flow begins at the end of the step.
                        Earliest(theta, lane, v, 1);
                    }
                    else
                    {
                        seeks[lane] = true;
                        opens = true;
                    }
                }
            }
        }

        if (opens)
        {
            LocateOpenings(integrator, time, taken, theta);
        }

        return any;
    }

    /// <summary>Flips the elements whose event ended the step.</summary>
    /// <param name="y">State at the event; flows of closed elements are set to zero.</param>
    /// <param name="theta">Share of the step taken.</param>
    /// <param name="error">Error of the step over what is allowed.</param>
    /// <returns>True when any element flipped.</returns>
    public bool Apply(T[] y, double[] theta, T error)
    {
        bool any = false;
        Span<double> row = stackalloc double[T.Count];
        Span<double> flow = stackalloc double[T.Count];
        for (int v = 0; v < Elements; v++)
        {
            bool touched = false;
            for (int lane = 0; lane < T.Count; lane++)
            {
                row[lane] = open[v][lane];
                flow[lane] = y[FlowOf[v]][lane];
                if (flips[(v * T.Count) + lane] && error[lane] <= 1 && theta[lane] > 0)
                {
                    row[lane] = 1 - row[lane];
                    flow[lane] = 0;
                    touched = true;
                    Count++;
                }
            }

            if (touched)
            {
                any = true;
                open[v] = T.Load(row);
                y[FlowOf[v]] = T.Load(flow);
            }
        }

        return any;
    }

    private void Earliest(double[] theta, int lane, int element, double at)
    {
        if (at > theta[lane])
        {
            return;
        }

        if (at < theta[lane])
        {
            for (int v = 0; v < Elements; v++)
            {
                flips[(v * T.Count) + lane] = false;
            }
        }

        theta[lane] = at;
        flips[(element * T.Count) + lane] = true;
    }

    private static double ClosingTime(LaneIntegrator<T> integrator, int lane, int index, double atStart, double atEnd)
    {
        (double a, double b, double fa, double fb) = (0, 1, atStart, atEnd);
        int lastSide = 0;
        for (int i = 0; i < 40 && b - a > ThetaTolerance; i++)
        {
            double x = fa > 0 ? ((a * fb) - (b * fa)) / (fb - fa) : 0.5 * (a + b);
            x = Math.Clamp(x, a + (0.01 * (b - a)), b - (0.01 * (b - a)));
            double f = integrator.DenseAt(lane, index, x);
            (a, b, fa, fb, lastSide) = f > 0
                ? (x, b, f, lastSide == 1 ? 0.5 * fb : fb, 1)
                : (a, x, lastSide == -1 ? 0.5 * fa : fa, f, -1);
        }

        return b;
    }

    /// <summary>First moment at which any closed valve is pressed open, of all seeking patients at once.</summary>
    private void LocateOpenings(LaneIntegrator<T> integrator, double[] time, double[] taken, double[] theta)
    {
        for (int lane = 0; lane < T.Count; lane++)
        {
            low[lane] = 0;
            high[lane] = theta[lane];
            side[lane] = 0;
        }

        Span<double> at = stackalloc double[T.Count];
        Pressed(integrator, time, taken, low, atLow);
        Pressed(integrator, time, taken, high, atHigh);
        for (int i = 0; i < MostIterations; i++)
        {
            bool busy = false;
            for (int lane = 0; lane < T.Count; lane++)
            {
                double width = high[lane] - low[lane];
                bool works = seeks[lane] && width > ThetaTolerance && atHigh[lane] > 0;
                busy |= works;
                double x = atLow[lane] < 0 ? ((low[lane] * atHigh[lane]) - (high[lane] * atLow[lane])) / (atHigh[lane] - atLow[lane]) : low[lane] + ThetaTolerance;
                guess[lane] = works ? Math.Clamp(x, low[lane] + (0.5 * ThetaTolerance), high[lane] - (0.01 * width)) : high[lane];
            }

            if (!busy)
            {
                break;
            }

            Pressed(integrator, time, taken, guess, at);
            for (int lane = 0; lane < T.Count; lane++)
            {
                if (at[lane] > 0)
                {
                    (high[lane], atHigh[lane]) = (guess[lane], at[lane]);
                    atLow[lane] *= side[lane] == -1 ? 0.5 : 1;
                    side[lane] = -1;
                }
                else
                {
                    (low[lane], atLow[lane]) = (guess[lane], at[lane]);
                    atHigh[lane] *= side[lane] == 1 ? 0.5 : 1;
                    side[lane] = 1;
                }
            }
        }

        // High is the first found point at which a valve is pressed open; flip whichever valves are.
        Pressed(integrator, time, taken, high, atHigh);
        for (int lane = 0; lane < T.Count; lane++)
        {
            for (int v = 0; seeks[lane] && v < Elements - 1; v++)
            {
                if (!(open[v][lane] > 0) && equations.Field.Opening[v][lane] > 0)
                {
                    Earliest(theta, lane, v, high[lane]);
                }
            }
        }
    }

    /// <summary>Largest opening pressure over the closed valves of each patient, at its own share of the step.</summary>
    private void Pressed(LaneIntegrator<T> integrator, double[] time, double[] taken, double[] share, Span<double> result)
    {
        integrator.DenseVolumes(share, volumes);
        T at = T.Load(time) + (T.Load(share) * T.Load(taken));
        equations.Clock.At(at);
        equations.Blood.Pressures(equations.Clock, volumes, equations.Field);
        T largest = T.Of(double.NegativeInfinity);
        for (int v = 0; v < Elements - 1; v++)
        {
            largest = T.Max(largest, T.IfPositive(open[v], T.Of(double.NegativeInfinity), equations.Field.Opening[v]));
        }

        for (int lane = 0; lane < T.Count; lane++)
        {
            result[lane] = largest[lane];
        }
    }
}
