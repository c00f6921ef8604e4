using System.Diagnostics;
using System.Globalization;
using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Bench;

/// <summary>The integrator against CVODE on the same equations written in C, in turn and at equal error.</summary>
internal static class CvodeFigures
{
    private const int Beats = 40;
    private const string Repeats = "5";

    /// <summary>Measures; says so where the compiler, the library or the source is not there.</summary>
    /// <param name="patient">Numbers.</param>
    public static void Print(CirculationParameters patient)
    {
        string source = Path.Combine("tests", "Cavaxis.Circulation.Tests", "CrossChecks", "circulation.c");
        if (!File.Exists(source))
        {
            Console.WriteLine($"\nNo comparison with CVODE: {source} is not below the current folder.");
            return;
        }

        string folder = Directory.CreateTempSubdirectory("circulation-bench-").FullName;
        try
        {
            string program = Path.Combine(folder, "circulation");
            string input = Path.Combine(folder, "input");
            Output("gcc", "-O2", "-o", program, source, "-lsundials_cvode", "-lsundials_nvecserial", "-lsundials_sunmatrixdense",
                "-lsundials_sunlinsoldense", "-lsundials_sunnonlinsolfixedpoint", "-lm");
            File.WriteAllText(input, Input(patient));
            Compare(patient, program, input);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Compare(CirculationParameters patient, string program, string input)
    {
        double[] exact = Numbers(Output(program, input, "adams", "1e-11")[1..]);
        (double ours, double error) = Ours(patient, exact, Tolerance.Usual.Relative);
        FigureTable table = new($"Against CVODE, {Beats} beats, equal error", "solver", "tolerance", "error", "time", "ours over it");
        table.Add($"Runge-Kutta 5(4)", $"{Tolerance.Usual.Relative:G2}", $"{error:G2}", $"{ours:F1} ms", $"1");
        foreach (string method in (string[])["adams", "bdf"])
        {
            // The loosest tolerance whose error is no larger than ours.
            double tolerance = 1e-3;
            string[] lines = Output(program, input, method, Number(tolerance), Repeats);
            while (tolerance > 1e-9 && Error(Numbers(lines[1..]), exact) > error)
            {
                tolerance /= 2;
                lines = Output(program, input, method, Number(tolerance), Repeats);
            }

            double time = 1e3 * double.Parse(lines[0].Split(' ')[0], CultureInfo.InvariantCulture);
            (ours, _) = Ours(patient, exact, Tolerance.Usual.Relative);
            table.Add($"CVODE {method}", $"{tolerance:G2}", $"{Error(Numbers(lines[1..]), exact):G2}", $"{time:F1} ms", $"{ours / time:F2}");
        }

        table.Print();
    }

    private static (double Ms, double Error) Ours(CirculationParameters patient, double[] exact, double tolerance)
    {
        double best = double.PositiveInfinity;
        double[] state = [];
        for (int run = 0; run < 10; run++)
        {
            LaneIntegrator<OneLane> integrator = CirculationFigures.Start<OneLane>(patient, tolerance);
            long start = Stopwatch.GetTimestamp();
            for (int beat = 0; beat < Beats; beat++)
            {
                integrator.Run([(integrator.Equations.Clock.BeatStart + integrator.Equations.Clock.BeatPeriod).Value]);
            }

            best = Math.Min(best, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            state = [.. integrator.State.ToArray().Select(static v => v.Value)];
        }

        return (best, Error(state, exact));
    }

    private static double Error(double[] state, double[] exact) => state
        .Select((v, i) => Math.Abs(v - exact[i]) / Math.Max(Tolerance.SizeOf(i, 1) ?? 1, Math.Abs(exact[i]))).Max();

    private static string Input(CirculationParameters patient) => string.Join('\n',
    [
        .. Enum.GetValues<CirculationParameter>().Select(p => $"{p}={Number(patient[p])}"),
        "mass=1",
        $"beats={Number(Beats)}",
        $"drainage={string.Join(' ', patient.Ports.Drainage.Select(Number))}",
        $"return={string.Join(' ', patient.Ports.VenousReturn.Select(Number))}",
        $"state={string.Join(' ', InitialState.Of(patient).Select(Number))}",
        string.Empty,
    ]);

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static double[] Numbers(string[] lines) => [.. lines.Select(static l => double.Parse(l, CultureInfo.InvariantCulture))];

    private static string[] Output(string command, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardOutput = true })
            ?? throw new InvalidOperationException($"{command} did not start.");
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            : throw new InvalidOperationException($"{command} ended with {process.ExitCode}; scripts/prepare installs what it needs.");
    }
}
