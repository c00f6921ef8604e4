using System.Diagnostics;
using System.Text.Json;

namespace Cavaxis.Dicom.Tests.Oracle;

/// <summary>What pydicom (and dcmtk, where pydicom has no decoder) reads in files: run once for all tests.</summary>
public sealed class OracleRun
{
    private const string Python = "/usr/bin/python3";

    private static readonly string Folder = Temporary();
    private static readonly Lazy<string> AllMade = new(Make);
    private static readonly Lazy<IReadOnlyList<OracleFile>> AllReal = new(static () => Read("real", RealFiles()));
    private static readonly Lazy<IReadOnlyList<OracleFile>> AllWritten = new(static () => Read("written", Directory.GetFiles(AllMade.Value, "*.dcm")));

    /// <summary>Folder of the files that make.py wrote.</summary>
    public string Made => AllMade.Value;

    /// <summary>A folder of this class of tests alone.</summary>
    public string Scratch { get; } = Directory.CreateDirectory(Path.Combine(Folder, Guid.NewGuid().ToString("N"))).FullName;

    /// <summary>What pydicom reads in every real file at hand.</summary>
    public IReadOnlyList<OracleFile> Real => AllReal.Value;

    /// <summary>What pydicom reads in every file that make.py wrote.</summary>
    public IReadOnlyList<OracleFile> Written => AllWritten.Value;

    /// <summary>Every real file: pydicom's own, the ultrasound and the odd CT slices beside the repository, and some of each series.</summary>
    public static string[] RealFiles() =>
    [
        .. Directory.GetFiles(Places.Pydicom, "*.dcm"),
        .. Files("us"), .. Files("us_synth"), .. Files("ct/odd_headers"), .. Files("ct"),
        .. Files("ct/chest_lidc_half").Where(static (_, i) => i % 23 == 0), .. Files("ct/pelvis_vhf_half").Where(static (_, i) => i % 23 == 0),
    ];

    /// <summary>Reads any files with pydicom.</summary>
    public static IReadOnlyList<OracleFile> Read(string name, IEnumerable<string> files)
    {
        string target = Directory.CreateDirectory(Path.Combine(Folder, name)).FullName;
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

    private static string Make()
    {
        string made = Directory.CreateDirectory(Path.Combine(Folder, "made")).FullName;
        Run(Python, Path.Combine(AppContext.BaseDirectory, "Oracle", "make.py"), made);
        return made;
    }

    private static string Temporary()
    {
        string folder = Directory.CreateTempSubdirectory("cavaxis-dicom-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    }

    private static string[] Files(string relative) =>
        Places.OfReference(relative) is { } place ? [.. Directory.GetFiles(place, "*.dcm").Order(StringComparer.Ordinal)] : [];
}
