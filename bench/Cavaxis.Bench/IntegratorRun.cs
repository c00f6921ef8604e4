using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Bench;

/// <summary>Integrates a row of patients on one thread, from given states on.</summary>
/// <typeparam name="T">One patient or a row of them.</typeparam>
/// <param name="patients">One for each lane.</param>
/// <param name="starts">State of each.</param>
/// <param name="tolerance">Error allowed in a step.</param>
internal sealed class IntegratorRun<T>(CirculationParameters[] patients, double[][] starts, double tolerance)
    where T : unmanaged, ILane<T>
{
    /// <summary>Runs every patient over the same time.</summary>
    /// <param name="seconds">Length, s.</param>
    /// <returns>What it cost.</returns>
    public SolverCounts Seconds(double seconds)
    {
        LaneIntegrator<T> integrator = Start();
        integrator.Run([.. Enumerable.Repeat(seconds, T.Count)]);
        return integrator.Counts;
    }

    /// <summary>Runs every patient over a number of its own beats.</summary>
    /// <param name="count">Beats.</param>
    /// <returns>Time and end.</returns>
    public SolverRun Beats(int count)
    {
        LaneIntegrator<T> integrator = Start();
        BeatClock<T> clock = integrator.Equations.Clock;
        double[] until = new double[T.Count];
        TimeSpan busy = Environment.CpuUsage.TotalTime;
        for (int beat = 0; beat < count; beat++)
        {
            for (int lane = 0; lane < T.Count; lane++)
            {
                until[lane] = clock.BeatStart[lane] + clock.BeatPeriod[lane];
            }

            integrator.Run(until);
        }

        double ms = (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds;
        return new SolverRun(ms, integrator.Counts.Evaluations, [.. integrator.State.ToArray().Select(static v => v[0])]);
    }

    private LaneIntegrator<T> Start()
    {
        LaneIntegrator<T> integrator = new(
            new CirculationEquations<T>(new ModelConstants<T>(patients)),
            [.. patients.Select(static p => p.MassKg / ParameterTable.ReferenceMassKg)],
            new Tolerance(tolerance));
        integrator.SetState([.. Enumerable.Range(0, StateIndex.Count).Select(i => T.Load([.. starts.Select(s => s[i])]))]);
        return integrator;
    }
}
