using System.Diagnostics;

namespace Cavaxis.Bench;

/// <summary>The command line as a person runs it: a new process from start to answer.</summary>
internal static class StartFigures
{
    private static readonly (string Name, string[] Settings)[] Variants =
    [
        ("as delivered", []),
        ("profile-guided tiering on", ["DOTNET_TieredPGO=1"]),
        ("tiered compilation off", ["DOTNET_TieredCompilation=0"]),
        ("precompiled framework not used", ["DOTNET_ReadyToRun=0"]),
        ("concurrent collector off", ["DOTNET_gcConcurrent=0"]),
    ];

    /// <summary>Runs the processes.</summary>
    /// <param name="runs">Runs of each variant; the least time counts.</param>
    /// <param name="everyVariant">Every setting of the runtime, or only the first two.</param>
    public static void Print(int runs, bool everyVariant)
    {
        string program = Path.Combine(AppContext.BaseDirectory, "cavaxis.dll");
        string casePath = DemoCases.All[^1].Path;
        FigureTable table = new("New process to answer, `plan --json`, 10 000 anatomies", "variant", "wall ms", "median ms");
        Row(table, "`--help` alone", [program, "--help"], [], runs);
        foreach ((string name, string[] settings) in everyVariant ? Variants : Variants[..2])
        {
            Row(table, name, [program, "plan", casePath, "--json"], settings, runs);
        }

        table.Print();
    }

    private static void Row(FigureTable table, string name, string[] arguments, string[] settings, int runs)
    {
        double[] wall = new double[runs];
        for (int i = 0; i < runs; i++)
        {
            ProcessStartInfo start = new(Environment.ProcessPath is { } host && Path.GetFileNameWithoutExtension(host) == "dotnet" ? host : "dotnet", arguments)
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            foreach (string setting in settings)
            {
                string[] parts = setting.Split('=');
                start.Environment[parts[0]] = parts[1];
            }

            long from = Stopwatch.GetTimestamp();
            using Process process = Process.Start(start) ?? throw new InvalidOperationException("The process did not start.");
            process.ErrorDataReceived += static (_, _) => { };
            process.BeginErrorReadLine();
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            wall[i] = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
        }

        Array.Sort(wall);
        table.Add($"{name}", $"{wall[0]:F0}", $"{wall[runs / 2]:F0}");
    }
}
