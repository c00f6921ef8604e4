using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Circulation.Simulation;

/// <summary>Samples every signal at equal steps of time from the dense output, each patient on its own grid.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
internal sealed class BreathSampler<T> : IStepWitness<T>
    where T : unmanaged, ILane<T>
{
    private readonly CirculationEquations<T> equations;
    private readonly double[] start;
    private readonly double[] spacing;
    private readonly int[] counts;
    private readonly int[] done = new int[T.Count];
    private readonly T[] state = new T[StateIndex.Count];
    private readonly T[] rates = new T[StateIndex.Count];
    private readonly T[] values = new T[SignalReader.Count];
    private readonly double[] share = new double[T.Count];

    /// <summary>Prepares.</summary>
    /// <param name="equations">Equations of the same parameters as those of the integrator; evaluated here for the samples.</param>
    /// <param name="start">First sample of each patient, s.</param>
    /// <param name="spacing">Step between samples of each patient, s.</param>
    /// <param name="counts">Samples wanted of each patient.</param>
    public BreathSampler(CirculationEquations<T> equations, double[] start, double[] spacing, int[] counts)
    {
        this.equations = equations;
        this.start = start;
        this.spacing = spacing;
        this.counts = counts;
        Samples = [.. counts.Select(c => (double[][])[.. Enumerable.Range(0, SignalReader.Count).Select(_ => new double[c])])];
    }

    /// <summary>Samples by patient, signal and time.</summary>
    public double[][][] Samples { get; }

    /// <inheritdoc/>
    public void Step(LaneIntegrator<T> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        Span<double> moment = stackalloc double[T.Count];
        while (true)
        {
            bool due = false;
            for (int lane = 0; lane < T.Count; lane++)
            {
                double at = start[lane] + (done[lane] * spacing[lane]);
                bool here = done[lane] < counts[lane] && at <= to[lane] && to[lane] > from[lane];
                due |= here;
                moment[lane] = here ? at : from[lane];
                share[lane] = here ? (at - from[lane]) / integrator.StepLength(lane) : -1;
            }

            if (!due)
            {
                return;
            }

            Read(integrator, moment);
        }
    }

    private void Read(LaneIntegrator<T> integrator, ReadOnlySpan<double> moment)
    {
        Span<double> inside = stackalloc double[T.Count];
        for (int lane = 0; lane < T.Count; lane++)
        {
            inside[lane] = Math.Max(0, share[lane]);
        }

        integrator.Dense(inside, state);
        equations.Rates(T.Load(moment), integrator.Open, state, rates);
        SignalReader.Read(equations, integrator.Open, state, values);
        for (int lane = 0; lane < T.Count; lane++)
        {
            if (share[lane] < 0)
            {
                continue;
            }

            for (int s = 0; s < values.Length; s++)
            {
                Samples[lane][s][done[lane]] = values[s][lane];
            }

            done[lane]++;
        }
    }
}
