using System.Diagnostics;
using System.Globalization;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>Runs the built command line as a process of its own, as a person would.</summary>
public static class CavaxisProcess
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    /// <summary>The built program, of the same build configuration as these tests.</summary>
    public static string Program { get; } = Find();

    /// <summary>Runs a command to its end, in the repository's folder.</summary>
    public static Ended Run(params string[] args) => Run(args, new Dictionary<string, string>());

    /// <summary>Runs a command to its end with more environment.</summary>
    public static Ended Run(IEnumerable<string> args, IReadOnlyDictionary<string, string> environment) =>
        RunTool("dotnet", [Program, .. QuickPlan.Of([.. args])], environment);

    /// <summary>Runs a line of shell in which $CAVAXIS stands for the program.</summary>
    public static Ended Shell(string line, IReadOnlyDictionary<string, string> environment)
    {
        Dictionary<string, string> whole = new(environment) { ["CAVAXIS"] = Program };
        return RunTool("bash", ["-c", line], whole);
    }

    /// <summary>Starts a command and leaves it running.</summary>
    public static Process Start(string tool, IEnumerable<string> args, IReadOnlyDictionary<string, string> environment)
    {
        ProcessStartInfo start = new(tool, args)
        {
            WorkingDirectory = RepositoryFolder.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        Process process = Process.Start(start) ?? throw new InvalidOperationException($"{tool} did not start.");
        process.StandardInput.Close();
        return process;
    }

    private static Ended RunTool(string tool, IEnumerable<string> args, IReadOnlyDictionary<string, string> environment)
    {
        using Process process = Start(tool, args, environment);
        using MemoryStream results = new();
        Task copy = process.StandardOutput.BaseStream.CopyToAsync(results);
        Task<string> faults = process.StandardError.ReadToEndAsync();
        DateTime end = DateTime.UtcNow + Patience;
        long peak = 0;
        while (!process.WaitForExit(TimeSpan.FromMilliseconds(15)))
        {
            peak = Math.Max(peak, Peak(process.Id));
            if (DateTime.UtcNow > end)
            {
                process.Kill(entireProcessTree: true);
                throw new TimeoutException($"{tool} did not end: {string.Join(' ', args)}");
            }
        }

        // What the command left running may hold its output open: the test fails by name then, and does not wait for ever.
        if (!Task.WaitAll([copy, faults], Patience))
        {
            throw new TimeoutException($"{tool} has ended, but something it started still writes: {string.Join(' ', args)}");
        }

        return new Ended(process.ExitCode, results.ToArray(), faults.Result, peak);
    }

    /// <summary>The kernel's own high-water mark; it needs no fast watching.</summary>
    private static long Peak(int id)
    {
        try
        {
            string? line = File.ReadLines($"/proc/{id}/status").FirstOrDefault(static l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : 1024 * long.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture);
        }
        catch (IOException)
        {
            return 0;
        }
    }

    private static string Find()
    {
        DirectoryInfo own = new(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
        string path = Path.Combine(own.Parent!.Parent!.FullName, "Cavaxis.Cli", own.Name, "cavaxis.dll");
        return File.Exists(path) ? path : throw new FileNotFoundException("The command line is not built beside the tests.", path);
    }
}
