using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;
using static Cavaxis.Circulation.Parameters.CirculationParameter;

namespace Cavaxis.Bench;

/// <summary>The circulation with gas transport: real time, rows against single patients, a cohort over the cores, CVODE.</summary>
internal static class CirculationFigures
{
    private const double Seconds = 20;

    private static readonly CirculationParameters Supported = CirculationParameters.Adult
        .With(CircuitOn, 1).With(ShuntFraction, 0.5).With(ArterialShareOfReturn, 0.6).With(ReflexGain, 1);

    /// <summary>Measures.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="cohort">Patients in the cohort.</param>
    public static void Print(Clock clock, int cohort)
    {
        FigureTable table = new("Circulation with gas transport", "work", "time", "figure");
        Timing one = clock.Measure(static () => Run<OneLane>());
        Timing eight = clock.Measure(static () => Run<EightLanes>());
        table.Add($"one patient, {Seconds:F0} s, one core", $"{one.WallMs:F1} ms", $"{Seconds * 1e3 / one.WallMs:F0} times real time");
        table.Add(
            $"eight patients side by side, {Seconds:F0} s, one core", $"{eight.WallMs:F1} ms",
            $"{8 * Seconds * 1e3 / eight.WallMs:F0} times real time, {8 * one.WallMs / eight.WallMs:F2} times one by one");
        Timing settle = clock.Measure(static () => CirculationSimulator.Settle(Supported));
        table.Add($"one patient to the settled breath", $"{settle.WallMs:F0} ms", $"{settle.Runs} runs");
        double[] advance = [.. new[] { 1, 2 }.Select(cores => Cohort(clock, cohort, cores))];
        for (int i = 0; i < advance.Length; i++)
        {
            table.Add(
                $"cohort of {cohort}, {Seconds:F0} s each, {i + 1} core{(i == 0 ? "" : "s")}", $"{advance[i]:F0} ms",
                $"{cohort * Seconds * 1e3 / advance[i]:F0} times real time, {advance[0] / advance[i]:F2} times one core");
        }

        table.Print();
        CvodeFigures.Print(Supported);
    }

    /// <summary>An integrator at the start.</summary>
    /// <typeparam name="T">One patient or a row of them.</typeparam>
    /// <param name="patient">Numbers of all.</param>
    /// <param name="tolerance">Error allowed.</param>
    /// <returns>The integrator.</returns>
    public static LaneIntegrator<T> Start<T>(CirculationParameters patient, double tolerance)
        where T : unmanaged, ILane<T>
    {
        LaneIntegrator<T> integrator = new(
            new CirculationEquations<T>(new ModelConstants<T>([.. Enumerable.Repeat(patient, T.Count)])),
            [.. Enumerable.Repeat(1.0, T.Count)],
            new Tolerance(tolerance));
        integrator.SetState([.. InitialState.Of(patient).Select(static v => T.Of(v))]);
        return integrator;
    }

    private static void Run<T>()
        where T : unmanaged, ILane<T> =>
        Start<T>(Supported, Tolerance.Usual.Relative).Run([.. Enumerable.Repeat(Seconds, T.Count)]);

    private static double Cohort(Clock clock, int patients, int cores)
    {
        int rows = patients / EightLanes.Count;
        return clock.Measure(() => Parallel.For(
            0, rows, new ParallelOptions { MaxDegreeOfParallelism = cores }, static _ => Run<EightLanes>())).WallMs;
    }
}
