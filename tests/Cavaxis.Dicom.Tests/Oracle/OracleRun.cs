using System.Diagnostics;
using System.Text.Json;

namespace Cavaxis.Dicom.Tests.Oracle;

/// <summary>What pydicom (and dcmtk, where pydicom has no decoder) reads in files: run once for all tests of a class.</summary>
public sealed class OracleRun : IDisposable
{
    private const string Python = "/usr/bin/python3";

    private readonly string folder = Directory.CreateTempSubdirectory("cavaxis-dicom-").FullName;
    private readonly Lazy<IReadOnlyList<OracleFile>> real;
    private readonly Lazy<IReadOnlyList<OracleFile>> written;

    public OracleRun()
    {
        Made = Directory.CreateDirectory(Path.Combine(folder, "made")).FullName;
        Run(Python, Path.Combine(AppContext.BaseDirectory, "Oracle", "make.py"), Made);
        real = new(() => Read("real", RealFiles()));
        written = new(() => Read("written", Directory.GetFiles(Made, "*.dcm")));
    }

    /// <summary>Folder of the files that make.py wrote.</summary>
    public string Made { get; }

    /// <summary>A folder that goes with this run.</summary>
    public string Scratch => Directory.CreateDirectory(Path.Combine(folder, "scratch")).FullName;

    /// <summary>What pydicom reads in every real file at hand.</summary>
    public IReadOnlyList<OracleFile> Real => real.Value;

    /// <summary>What pydicom reads in every file that make.py wrote.</summary>
    public IReadOnlyList<OracleFile> Written => written.Value;

    /// <summary>Every real file: pydicom's own, the ultrasound and the odd CT slices beside the repository, and some of each series.</summary>
    public static string[] RealFiles() =>
    [
        .. Directory.GetFiles(Places.Pydicom, "*.dcm"),
        .. Folder("us"), .. Folder("us_synth"), .. Folder("ct/odd_headers"), .. Folder("ct"),
        .. Folder("ct/chest_lidc_half").Where(static (_, i) => i % 23 == 0), .. Folder("ct/pelvis_vhf_half").Where(static (_, i) => i % 23 == 0),
    ];

    /// <summary>Reads any files with pydicom.</summary>
    public IReadOnlyList<OracleFile> Read(string name, IEnumerable<string> files)
    {
        string target = Directory.CreateDirectory(Path.Combine(folder, name)).FullName;
        Run(Python, [Path.Combine(AppContext.BaseDirectory, "Oracle", "oracle.py"), target, .. files]);
        using FileStream index = File.OpenRead(Path.Combine(target, "index.json"));
        List<OracleFile> read = JsonSerializer.Deserialize<List<OracleFile>>(index, JsonSerializerOptions.Web)!;
        return [.. read.Select((file, number) => file with { Prefix = Path.Combine(target, $"{number}-") })];
    }

    /// <summary>Runs a program and gives what it printed.</summary>
    public static string Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> error = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program}: {error.Result}");
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string[] Folder(string relative) =>
        Places.OfReference(relative) is { } place ? [.. Directory.GetFiles(place, "*.dcm").Order(StringComparer.Ordinal)] : [];
}
