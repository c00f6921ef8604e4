using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Bench;

/// <summary>
/// The second implementation of the equations that the tests hold against the first: C, solved by CVODE, compiled with -O2. Debian packages the
/// library compiled without optimisation, three times as slow; a fair comparison compiles it from its source as well.
/// </summary>
internal sealed class CvodeProgram : IDisposable
{
    private static readonly string[] Libraries =
    [
        "-lsundials_cvode", "-lsundials_nvecserial", "-lsundials_sunmatrixdense", "-lsundials_sunlinsoldense",
        "-lsundials_sunnonlinsolfixedpoint", "-lm",
    ];

    // Of the whole source of SUNDIALS, what CVODE with serial vectors and dense matrices needs.
    private static readonly string[] LibraryParts =
    [
        "cvode/cvode.c", "cvode/cvode_direct.c", "cvode/cvode_fused_stubs.c", "cvode/cvode_io.c", "cvode/cvode_ls.c", "cvode/cvode_nls.c",
        "cvode/cvode_proj.c", "nvector/serial/nvector_serial.c", "sunmatrix/dense/sunmatrix_dense.c", "sunmatrix/band/sunmatrix_band.c",
        "sunlinsol/dense/sunlinsol_dense.c", "sunnonlinsol/fixedpoint/sunnonlinsol_fixedpoint.c", "sunnonlinsol/newton/sunnonlinsol_newton.c",
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("circulation-bench-").FullName;

    private CvodeProgram()
    {
    }

    private string Program => Path.Combine(folder, "circulation");

    /// <summary>Compiles.</summary>
    /// <param name="librarySource">Folder of the source of SUNDIALS 6.4.1, to compile the library with -O2; null for the packaged library.</param>
    /// <param name="reason">Why there is none: no compiler, or no library.</param>
    /// <returns>The program, or null.</returns>
    public static CvodeProgram? Compile(string? librarySource, out string reason)
    {
        string source = Path.Combine(RepositoryFolder.Path, "tests", "Cavaxis.Circulation.Tests", "CrossChecks", "circulation.c");
        CvodeProgram program = new();
        try
        {
            string[] library = librarySource is null ? Libraries : [.. program.LibraryFrom(librarySource), "-lm"];
            Output("gcc", ["-O2", "-w", "-o", program.Program, source, .. library]);
            reason = string.Empty;
            return program;
        }
        catch (Exception fault) when (fault is InvalidOperationException or IOException)
        {
            program.Dispose();
            reason = fault.Message;
            return null;
        }
    }

    /// <summary>Integrates a patient over a number of beats.</summary>
    /// <param name="input">What <see cref="Write"/> gave.</param>
    /// <param name="method">bdf or adams.</param>
    /// <param name="tolerance">Relative tolerance.</param>
    /// <param name="repeats">Runs inside the process; the first ones warm it up.</param>
    /// <returns>The quickest integration, timed by the program itself without the start of the process.</returns>
    public SolverRun Run(string input, string method, double tolerance, int repeats)
    {
        string[] lines = Output(Program, [input, method, Number(tolerance), Number(repeats)]);
        string[] head = lines[0].Split(' ');
        return new SolverRun(1e3 * Value(head[0]), (long)Value(head[2]), [.. lines[1..].Select(Value)]);
    }

    /// <summary>Writes a patient down for the program.</summary>
    /// <param name="patient">Numbers.</param>
    /// <param name="state">State to start from.</param>
    /// <param name="beats">Beats to run.</param>
    /// <returns>Path of the file, which lives as long as this.</returns>
    public string Write(CirculationParameters patient, double[] state, int beats)
    {
        string path = Path.Combine(folder, Guid.NewGuid().ToString("N"));
        File.WriteAllLines(
            path,
            [
                .. Enum.GetValues<CirculationParameter>().Select(p => $"{p}={Number(patient[p])}"),
                $"mass={Number(patient.MassKg / ParameterTable.ReferenceMassKg)}",
                $"beats={Number(beats)}",
                $"drainage={string.Join(' ', patient.Ports.Drainage.Select(Number))}",
                $"return={string.Join(' ', patient.Ports.VenousReturn.Select(Number))}",
                $"state={string.Join(' ', state.Select(Number))}",
            ]);
        return path;
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private IEnumerable<string> LibraryFrom(string librarySource)
    {
        // The packaged configuration, without the message passing that one thread does not need.
        string include = Directory.CreateDirectory(Path.Combine(folder, "include", "sundials")).FullName;
        string configuration = File.ReadAllText("/usr/include/sundials/sundials_config.h");
        File.WriteAllText(
            Path.Combine(include, "sundials_config.h"), configuration.Replace("SUNDIALS_MPI_ENABLED 1", "SUNDIALS_MPI_ENABLED 0", StringComparison.Ordinal));
        string parts = Path.Combine(librarySource, "src");
        return
        [
            $"-I{Path.Combine(folder, "include")}", $"-I{Path.Combine(librarySource, "include")}", $"-I{Path.Combine(parts, "sundials")}",
            $"-I{Path.Combine(parts, "cvode")}", .. LibraryParts.Select(part => Path.Combine(parts, part)),
            .. Directory.GetFiles(Path.Combine(parts, "sundials"), "*.c")
                .Where(static file => Path.GetFileNameWithoutExtension(file) is not ("sundials_xbraid" or "sundials_futils")).Order(StringComparer.Ordinal),
        ];
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static double Value(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string[] Output(string command, string[] arguments)
    {
        ProcessStartInfo start = new(command, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };

        // The dense matrix of the implicit method is solved inside the library; a threaded one would no longer be one thread against one.
        start.Environment["OPENBLAS_NUM_THREADS"] = "1";
        try
        {
            using Process process = Process.Start(start) ?? throw new InvalidOperationException($"{command} did not start.");
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0
                ? output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                : throw new InvalidOperationException($"{command} ended with {process.ExitCode}: {errors.Result}");
        }
        catch (Win32Exception fault)
        {
            throw new InvalidOperationException($"{command} cannot be run: {fault.Message}", fault);
        }
    }
}
