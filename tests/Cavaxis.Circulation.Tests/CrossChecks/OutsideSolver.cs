using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Circulation.Tests.CrossChecks;

/// <summary>The second implementations, in C and in Python, run live with the tools of the system.</summary>
public sealed class OutsideSolver : IDisposable
{
    private const string Prepare = "Run scripts/prepare, which installs gcc, libsundials-dev and python3-scipy.";

    private static readonly string[] Libraries =
    [
        "-lsundials_cvode", "-lsundials_nvecserial", "-lsundials_sunmatrixdense", "-lsundials_sunlinsoldense",
        "-lsundials_sunnonlinsolfixedpoint", "-lm",
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("circulation-").FullName;
    private readonly Lazy<string> program;

    /// <summary>Compiles when first used.</summary>
    public OutsideSolver() => program = new Lazy<string>(Compile);

    /// <summary>Solves with CVODE.</summary>
    /// <param name="input">Lines of the input file.</param>
    /// <param name="method">bdf or adams.</param>
    /// <param name="tolerance">Relative tolerance.</param>
    /// <returns>State at the end.</returns>
    public double[] Cvode(string input, string method, double tolerance) =>
        Numbers(Run(program.Value, [Write(input), method, Number(tolerance)])[1..]);

    /// <summary>Solves with SciPy's Radau method.</summary>
    /// <param name="input">Lines of the input file.</param>
    /// <param name="tolerance">Relative tolerance.</param>
    /// <returns>State at the end.</returns>
    public double[] Radau(string input, double tolerance) =>
        Numbers(Run("/usr/bin/python3", [Source("circulation.py"), Write(input), Number(tolerance)]));

    /// <summary>The input file of the second implementations.</summary>
    /// <param name="patient">Numbers.</param>
    /// <param name="state">State to start from.</param>
    /// <param name="beats">Beats to run.</param>
    /// <returns>Lines name=value.</returns>
    public static string Input(CirculationParameters patient, ReadOnlySpan<double> state, int beats)
    {
        List<string> lines =
        [
            .. Enum.GetValues<CirculationParameter>().Select(p => $"{p}={Number(patient[p])}"),
            $"mass={Number(patient.MassKg / ParameterTable.ReferenceMassKg)}",
            $"beats={Number(beats)}",
            $"drainage={string.Join(' ', patient.Ports.Drainage.Select(Number))}",
            $"return={string.Join(' ', patient.Ports.VenousReturn.Select(Number))}",
            $"state={string.Join(' ', state.ToArray().Select(Number))}",
        ];
        return string.Join('\n', lines) + '\n';
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static double[] Numbers(string[] lines) => [.. lines.Select(static l => double.Parse(l, CultureInfo.InvariantCulture))];

    private static string Source(string name) => Path.Combine(AppContext.BaseDirectory, "CrossChecks", name);

    private string Write(string input)
    {
        string path = Path.Combine(folder, Guid.NewGuid().ToString("N"));
        File.WriteAllText(path, input);
        return path;
    }

    private string Compile()
    {
        string target = Path.Combine(folder, "circulation");
        Run("gcc", ["-O2", "-Wall", "-Wextra", "-o", target, Source("circulation.c"), .. Libraries]);
        return target;
    }

    private static string[] Run(string command, string[] arguments)
    {
        ProcessStartInfo start = new(command, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["OPENBLAS_NUM_THREADS"] = "1";
        try
        {
            using Process process = Process.Start(start) ?? throw new InvalidOperationException($"{command} did not start. {Prepare}");
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"{command} ended with {process.ExitCode}. {Prepare}\n{errors.Result}");
            return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        }
        catch (Win32Exception fault)
        {
            throw new InvalidOperationException($"{command} cannot be run: {fault.Message}. {Prepare}", fault);
        }
    }
}
