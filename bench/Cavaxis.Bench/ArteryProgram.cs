using System.Diagnostics;
using System.Globalization;
using Cavaxis.Arteries.Grid;
using Cavaxis.Arteries.Network;

namespace Cavaxis.Bench;

/// <summary>The scheme of the arteries in C (arteries.c), compiled by gcc when the bench runs.</summary>
internal sealed class ArteryProgram : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("arteries-bench-").FullName;

    private ArteryProgram()
    {
    }

    /// <summary>Compiles.</summary>
    /// <param name="flags">Flags of the compiler.</param>
    /// <returns>The program; null where there is no compiler.</returns>
    public static ArteryProgram? Compile(params string[] flags)
    {
        ArteryProgram program = new();
        try
        {
            program.Output("gcc", [.. flags, "-o", Path.Combine(program.folder, "arteries"), Path.Combine(RepositoryFolder.Path, "bench", "Cavaxis.Bench", "arteries.c"), "-lm"]);
            return program;
        }
        catch (Exception fault) when (fault is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            program.Dispose();
            return null;
        }
    }

    /// <summary>Runs it.</summary>
    /// <param name="input">What <see cref="Write"/> wrote.</param>
    /// <param name="beats">Beats before the state is read and the timed beats begin.</param>
    /// <param name="repeats">Timed beats; the quickest counts.</param>
    /// <returns>Processor time of a beat, its steps, and the areas of all cells after the first beats.</returns>
    public (double Ms, long Steps, double[] Areas) Run(string input, int beats, int repeats)
    {
        string[] lines = Output(Path.Combine(folder, "arteries"), [input, Text(beats), Text(repeats)]);
        string[] last = lines[^1].Split(' ');
        return (Number(last[1]), long.Parse(last[3], CultureInfo.InvariantCulture), [.. lines[0].Split(' ').Skip(1).Select(Number)]);
    }

    /// <summary>Writes a tree down for the program.</summary>
    /// <param name="grid">Cells.</param>
    /// <param name="areas">Areas at the start.</param>
    /// <param name="ends">For each open node R1, R2, C and pressure, R1 negative for the inlet.</param>
    /// <param name="wave">Times and values of the inflow.</param>
    /// <param name="courant">Part of the largest time step.</param>
    /// <returns>Path of the file.</returns>
    public string Write(CellGrid grid, double[] areas, IReadOnlyList<double[]> ends, double[][] wave, double courant)
    {
        ArterialNetwork network = grid.Network;
        IReadOnlyList<SegmentEnd>[] junctions = [.. network.Branches.Where(static b => b.Count > 1)];
        SegmentEnd[] joined = [.. junctions.SelectMany(static b => b)];
        SegmentEnd[] open = [.. network.OpenNodes.Select(n => network.Branches[network.NodeOf(n)][0])];
        int[] first = [0, .. junctions.Select((_, n) => junctions.Take(n + 1).Sum(static b => b.Count))];
        double[][] geometry =
        [
            grid.PerDx, grid.Stiffness, grid.Softness, grid.Offset, grid.RootReference, grid.RootSlope, grid.StiffnessSlope, grid.FaceStiffness, grid.FaceSoftness, grid.FaceOffset, areas,
        ];
        IEnumerable<double> numbers =
        [
            grid.Length, grid.Start.Length, junctions.Length, joined.Length, open.Length, wave.Length,
            network.Fluid.Density, network.Fluid.Drag, courant, wave[^1][0] - wave[0][0], 0,
            .. geometry.SelectMany(static g => g), .. Doubles(grid.Start), .. Doubles(grid.Count), .. Doubles(first),
            .. Doubles(joined.Select(grid.FaceOf)), .. Doubles(joined.Select(grid.CellOf)), .. Doubles(joined.Select(Sign)),
            .. Doubles(open.Select(grid.FaceOf)), .. Doubles(open.Select(grid.CellOf)), .. Doubles(open.Select(Sign)),
            .. Enumerable.Range(0, 4).SelectMany(i => ends.Select(e => e[i])), .. wave.Select(static w => w[0]), .. wave.Select(static w => w[1]),
        ];
        string path = Path.Combine(folder, "tree.txt");
        File.WriteAllLines(path, numbers.Select(static n => n.ToString("R", CultureInfo.InvariantCulture)));
        return path;
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static int Sign(SegmentEnd end) => end.IsDistal ? 1 : -1;

    private static IEnumerable<double> Doubles(IEnumerable<int> values) => values.Select(static v => (double)v);

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private string[] Output(string command, string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder })
            ?? throw new InvalidOperationException($"{command} did not start.");
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output.Split('\n', StringSplitOptions.RemoveEmptyEntries) : throw new InvalidOperationException($"{command}: {errors.Result}");
    }
}
