using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Bench;

/// <summary>The integrator against CVODE on the same equations in C: the same settled patient, the same beats, equal error, in turn.</summary>
internal static class CvodeFigures
{
    private const int Beats = 20;
    private const int Seed = 20;
    private const int RunsInPair = 3;
    private const double ReferenceTolerance = 1e-11;

    /// <summary>The references may differ by this share of the least error asked for.</summary>
    private const double MostApart = 0.1;

    /// <summary>Measures; says so where the compiler or the library is not there.</summary>
    /// <param name="librarySource">Folder of the source of SUNDIALS, to compile the library with -O2; null for the packaged library.</param>
    /// <param name="kinds">How many kinds of support, from the last on.</param>
    /// <param name="methods">adams, bdf.</param>
    /// <param name="targets">Errors at which to compare.</param>
    /// <param name="perDecade">Tolerances in a factor of ten while the equal error is sought.</param>
    /// <param name="pairs">Runs of each, in turn.</param>
    public static void Print(string? librarySource, int kinds, string[] methods, double[] targets, int perDecade, int pairs)
    {
        using CvodeProgram? program = CvodeProgram.Compile(librarySource, out string reason);
        if (program is null)
        {
            Console.WriteLine($"\nNo comparison with CVODE. {reason} scripts/prepare installs what it needs.");
            return;
        }

        FigureTable table = new(
            $"Against CVODE (library {(librarySource is null ? "as packaged, not optimised" : "compiled from source with -O2")}), {Beats} beats from the settled state, one thread each, {pairs} pairs, {MachineLoad.Words()}",
            "support", "error asked", "solver", "tolerance", "error", "processor ms", "evaluations", "ns each", "ours over it", "quartiles", "eight side by side over it");
        foreach ((string name, CirculationParameters patient) in SupportedPatients.Kinds.TakeLast(kinds))
        {
            Compare(table, program, name, patient, methods, targets, perDecade, pairs);
        }

        table.Print();
    }

    private static void Compare(
        FigureTable table, CvodeProgram program, string name, CirculationParameters patient, string[] methods, double[] targets, int perDecade, int pairs)
    {
        CirculationParameters[] row = [patient, .. SupportedPatients.Around(patient, EightLanes.Count - 1, Seed)];
        double[][] starts = [.. CirculationSimulator.Settle(row).Select(static s => s.State.ToArray())];
        string input = program.Write(patient, starts[0], Beats);
        double mass = patient.MassKg / ParameterTable.ReferenceMassKg;

        // Each is judged against the mean of two tight runs, its own and the other's; they must differ by far less than the errors asked for.
        double[] tight = Ours<OneLane>(ReferenceTolerance).State;
        double[] other = program.Run(input, "adams", ReferenceTolerance, 1).State;
        double apart = Difference(tight, other, mass);
        if (!(apart < MostApart * targets.Min()))
        {
            throw new InvalidOperationException(FormattableString.Invariant($"{name}: the two tight runs differ by {apart:G2}; nothing can be judged against them."));
        }

        double[] exact = [.. tight.Zip(other, static (a, b) => 0.5 * (a + b))];
        ToleranceSweep ours = new(targets.Min(), perDecade, t => Difference(Ours<OneLane>(t).State, exact, mass));
        ToleranceSweep[] theirs =
            [.. methods.Select(m => new ToleranceSweep(targets.Min(), perDecade, t => Difference(program.Run(input, m, t, 1).State, exact, mass)))];
        foreach (double target in targets)
        {
            double tolerance = ours.At(target);
            SolverRun[][] runs = new SolverRun[pairs][];
            for (int pair = 0; pair < pairs; pair++)
            {
                runs[pair] =
                [
                    Best(() => Ours<OneLane>(tolerance)), Best(() => Ours<EightLanes>(tolerance)),
                    .. methods.Select((m, i) => program.Run(input, m, theirs[i].At(target), RunsInPair)),
                ];
            }

            Row(0, "ours", tolerance);
            for (int m = 0; m < methods.Length; m++)
            {
                Row(m + 2, $"CVODE {methods[m]}", theirs[m].At(target));
            }

            void Row(int at, string solver, double used)
            {
                double ms = new Quartiles([.. runs.Select(r => r[at].Ms)]).Median;
                Quartiles ratio = new([.. runs.Select(r => r[0].Ms / r[at].Ms)]);
                Quartiles eight = new([.. runs.Select(r => r[1].Ms / EightLanes.Count / r[at].Ms)]);
                table.Add(
                    $"{name}", $"{target:0E0}", $"{solver}", $"{used:0.0E0}", $"{Difference(runs[0][at].State, exact, mass):0.0E0}", $"{ms:F1}",
                    $"{runs[0][at].Evaluations}", $"{ms * 1e6 / runs[0][at].Evaluations:F0}", $"{ratio.Median:F2}", $"{ratio.Low:F2} to {ratio.High:F2}",
                    $"{eight.Median:F2}");
            }
        }

        SolverRun Ours<T>(double tolerance)
            where T : unmanaged, ILane<T> => new IntegratorRun<T>(row[..T.Count], starts[..T.Count], tolerance).Beats(Beats);
    }

    /// <summary>Least time of as many runs as the other program makes for its one.</summary>
    private static SolverRun Best(Func<SolverRun> run) => Enumerable.Range(0, RunsInPair).Select(_ => run()).MinBy(static r => r.Ms)!;

    /// <summary>Largest difference over the state, relative to the quantity or, where that is small, to its usual size.</summary>
    private static double Difference(double[] state, double[] exact, double mass) => Enumerable.Range(0, StateIndex.Count)
        .Max(i => Math.Abs(state[i] - exact[i]) / Math.Max(Tolerance.SizeOf(i, mass) ?? (100 * mass), Math.Abs(exact[i])));
}
