using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Images;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.EndToEnd.Tests.ImageVerbs;

/// <summary>The verb <c>image axis</c> on scans that the tests write as DICOM, through the reader and the process it reads in.</summary>
public sealed class ImageAxisTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("cavaxis-axis-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(200, 25, 0, false)]
    [InlineData(140, 30, 12, true)]
    public void A_scan_written_as_DICOM_gives_lengths_diameters_angles_and_the_case_with_them(double contrast, double noise, double turn, bool signed)
    {
        string slices = Path.Combine(folder, "slices");
        WrittenScan.Write(slices, contrast, noise, turn, signed);
        string pictures = Path.Combine(folder, "look");
        string made = Path.Combine(folder, "new.json");
        string demo = Path.Combine(RepositoryFolder.Root, "demo", "tall-man-severe-lung-failure.json");
        double lean = Math.Tan(WrittenScan.LeanDeg * Math.PI / 180);
        string lower = FormattableString.Invariant($"0,{lean * 66:F2},-90");
        (ExitCode code, string json, string err) = InProcess.Run("image", "axis", slices, "--seed", "0,0,80", "--seed", lower, "--case", demo, "--out", made, "--pictures", pictures, "--json");
        Assert.True(code == ExitCode.Done, json + err);
        JsonElement root = JsonDocument.Parse(json).RootElement;
        Assert.Equal(JsonValueKind.Null, root.GetProperty("failure").ValueKind);
        JsonElement superior = root.GetProperty("landmarks").EnumerateArray().Single(static l => l.GetProperty("landmark").GetString() == "scaj");

        // The ellipsoid is as wide as the upper tube at c sqrt(1 - r²/a²) above its middle.
        double junction = WrittenScan.TallMm * Math.Sqrt(1 - Math.Pow(WrittenScan.UpperMm / WrittenScan.WideMm, 2));
        Assert.Equal(junction, superior.GetProperty("zMm").GetDouble(), 2.0);
        Assert.Equal("proposed", superior.GetProperty("origin").GetString());
        JsonElement angles = root.GetProperty("angles");
        Assert.Equal(WrittenScan.LeanDeg, angles.GetProperty("bendSagittalDeg").GetDouble(), 2.0);
        Assert.Equal(0, angles.GetProperty("bendFrontalDeg").GetDouble(), 2.0);
        Dictionary<string, JsonElement> measured = JsonDocument.Parse(File.ReadAllBytes(made)).RootElement.GetProperty("axis").EnumerateArray()
            .Where(static e => e.TryGetProperty("method", out JsonElement method) && method.GetString() == "ct").ToDictionary(static e => e.GetProperty("dimension").GetString()!);
        Assert.Equal(2 * WrittenScan.UpperMm, measured["svcDiameter"].GetProperty("value").GetDouble(), 0.7);
        Assert.Equal(2 * WrittenScan.LowerMm, measured["ivcDiameter"].GetProperty("value").GetDouble(), 0.7);
        Assert.True(measured["atrialSpan"].GetProperty("sd").GetDouble() > 1);
        string[] names = [.. root.GetProperty("pictures").EnumerateArray().Select(static p => p.GetString()!)];
        Assert.Contains("coronal.png", names);
        Assert.Contains("axial-scaj.png", names);
        Assert.All(names, name => Assert.Equal(new byte[] { 0x89, 0x50, 0x4E, 0x47 }, File.ReadAllBytes(Path.Combine(pictures, name))[..4]));
    }

    [Fact]
    public void Without_contrast_the_exit_code_is_one_the_reason_is_told_and_no_case_is_written()
    {
        string slices = Path.Combine(folder, "slices");
        WrittenScan.Write(slices, 0, 60, 0, signed: true);
        string made = Path.Combine(folder, "new.json");
        string demo = Path.Combine(RepositoryFolder.Root, "demo", "tall-man-severe-lung-failure.json");
        (ExitCode code, string told, _) = InProcess.Run("image", "axis", slices, "--seed", "0,0,80", "--seed", "0,17,-90", "--case", demo, "--out", made);
        Assert.Equal(ExitCode.StopFound, code);
        Assert.Contains("No axis", told, StringComparison.Ordinal);
        Assert.Contains("limit", told, StringComparison.Ordinal);
        Assert.False(File.Exists(made));
        Assert.Equal(ExitCode.InputError, InProcess.Run("image", "axis", slices, "--seed", "0,0", "--seed", "0,17,-90").Code);
        Assert.Equal(ExitCode.InputError, InProcess.Run("image", "axis", slices, "--seed", "0,0,80", "--seed", "0,17,-90", "--confirm", "heart=1,2,3").Code);
        Assert.Equal(ExitCode.InputError, InProcess.Run("image", "axis", slices, "--seed", "0,0,80", "--seed", "0,17,-90", "--case", demo).Code);
    }
}
