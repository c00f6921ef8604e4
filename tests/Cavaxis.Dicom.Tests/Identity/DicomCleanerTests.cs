using System.Text;
using System.Text.Json;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Pixels;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Tests.Oracle;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Tests.Identity;

public sealed class DicomCleanerTests(OracleRun oracle) : IClassFixture<OracleRun>
{
    private static readonly IdentityKey Key = new("an invented key, 32 bytes long.."u8);

    /// <summary>Representations whose old text must not be found anywhere in the new file.</summary>
    private static readonly string[] Telling = ["PN", "DA", "DT", "LO", "SH", "UI", "LT", "ST", "UT", "AE"];

    // Both files are read with pydicom: what the profile names must be gone from the bytes, and the pixels must be the same.
    [Fact]
    public async Task Nothing_that_the_profile_names_is_left_in_any_cleaned_file_and_its_pixels_are_the_old_ones()
    {
        string folder = Directory.CreateDirectory(Path.Combine(oracle.Scratch, "cleaned")).FullName;
        await using DicomReader reader = new();
        DicomCleaner cleaner = new(reader, Key);
        List<(string Old, string New)> pairs = [];
        foreach (OracleFile file in oracle.Real.Concat(oracle.Written).Where(static f => f.Written.Length > 0))
        {
            try
            {
                string target = Path.Combine(folder, $"{pairs.Count}.dcm");
                _ = await cleaner.CleanAsync(await reader.ReadAsync(file.Path), target);
                pairs.Add((file.Path, target));
            }
            catch (InputFaultException)
            {
                // Refused pixels are refused here as well: OracleTests names which.
            }
        }

        Assert.True(pairs.Count > (Places.Reference is null ? 60 : 90), $"{pairs.Count}"); // The reference images lie beside the repository, not in it.
        Dictionary<string, string[][]> dumps = Dump([.. pairs.SelectMany(static p => new[] { p.Old, p.New })]);
        List<string> left = [];
        foreach ((string old, string cleaned) in pairs)
        {
            left.AddRange(Left(dumps[old], dumps[cleaned], await File.ReadAllBytesAsync(cleaned)).Select(l => $"{Path.GetFileName(old)}: {l}"));
        }

        Assert.True(left.Count == 0, string.Join('\n', left));
        List<string> differences = [];
        Dictionary<string, OracleFile> olds = oracle.Real.Concat(oracle.Written).DistinctBy(static f => f.Path).ToDictionary(static f => f.Path);
        foreach ((OracleFile found, (string old, _)) in OracleRun.Read("recleaned", pairs.Select(static p => p.New)).Zip(pairs))
        {
            differences.AddRange(Apart(olds[old], found));
        }

        Assert.True(differences.Count == 0, string.Join('\n', differences));
    }

    [Fact]
    public async Task Dcmtk_reads_a_cleaned_file_and_finds_the_marks_of_the_profile()
    {
        await using DicomReader reader = new();
        string target = Path.Combine(oracle.Scratch, "marks.dcm");
        CleanedFile done = await new DicomCleaner(reader, Key).CleanAsync(await reader.ReadAsync(Path.Combine(oracle.Made, "implicit.dcm")), target);
        string dump = OracleRun.Run("dcmdump", "-Un", target);
        Assert.Contains("(0012,0062) CS [YES]", dump, StringComparison.Ordinal);
        Assert.Contains("(0012,0063) LO [DICOM PS3.15 Basic Application Confidentiality Profile]", dump, StringComparison.Ordinal);
        Assert.Contains("(0008,0100) SH [113100]", dump, StringComparison.Ordinal);
        Assert.Contains($"(0010,0020) LO [{Key.Person("INV-0042")}]", dump, StringComparison.Ordinal);
        Assert.Contains("(0010,0010) PN (no value available)", dump, StringComparison.Ordinal);
        Assert.Contains("(0008,0020) DA (no value available)", dump, StringComparison.Ordinal);
        Assert.Contains("(0018,602c) FD 0.025", dump, StringComparison.Ordinal);
        Assert.DoesNotContain("INVENTED", dump, StringComparison.Ordinal);
        Assert.DoesNotContain("Invented", dump, StringComparison.Ordinal);
        Assert.Equal((Key.Person("INV-0042"), 0), (done.Person, done.MaskedPixels));
    }

    [Fact]
    public async Task Slices_of_one_series_stay_one_series_and_references_still_point_at_each_other()
    {
        await using DicomReader reader = new();
        DicomCleaner cleaner = new(reader, Key);
        string folder = Directory.CreateDirectory(Path.Combine(oracle.Scratch, "series")).FullName;
        foreach (string file in Directory.GetFiles(Path.Combine(oracle.Made, "even")))
        {
            await cleaner.CleanAsync(await reader.ReadAsync(file), Path.Combine(folder, Path.GetFileName(file)));
        }

        Dicom.Series.SeriesReader series = new(reader);
        Assert.Equal(
            (await series.ReadAsync(Path.Combine(oracle.Made, "even"))).Volume.Values.ToArray(),
            (await series.ReadAsync(folder)).Volume.Values.ToArray());
        string dump = OracleRun.Run("dcmdump", "-Un", Path.Combine(folder, "0-0.dcm"));
        Assert.Contains($"(0008,1155) UI [{Key.Uid("1.2.3.4.1")}]", dump, StringComparison.Ordinal);
        Assert.Contains($"(0020,000e) UI [{Key.Uid("1.2.3.5.2")}]", dump, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("explicit", 0)]
    [InlineData("jpeg-baseline-colour", 0)]
    [InlineData("jpeg-lossless-loop", 3)]
    [InlineData("rle16", 0)]
    [InlineData("inverse", 0)]
    [InlineData("ybr422", 0)]
    [InlineData("big16signed", 0)]
    public async Task A_masked_rectangle_is_black_and_every_other_pixel_is_the_old_one(string name, int frame)
    {
        await using DicomReader reader = new();
        DicomFile old = await reader.ReadAsync(Path.Combine(oracle.Made, name + ".dcm"));
        string target = Path.Combine(oracle.Scratch, $"masked-{name}.dcm");
        PixelMask mask = PixelMask.Rectangle(5, 7, 20, 10);
        CleanedFile done = await new DicomCleaner(reader, Key).CleanAsync(old, target, mask);
        Assert.Equal(200, done.MaskedPixels);
        DicomFile cleaned = await reader.ReadAsync(target);
        Assert.Equal("1.2.840.10008.1.2.1", cleaned.Header.TransferSyntax);
        Assert.Equal(old.FrameCount, cleaned.FrameCount);
        StoredFrame before = await reader.StoredFrameAsync(old, frame);
        StoredFrame after = await reader.StoredFrameAsync(cleaned, frame);
        HashSet<string> black = [];
        for (int y = 0; y < before.Height; y++)
        {
            for (int x = 0; x < before.Width; x++)
            {
                string now = string.Join(' ', Enumerable.Range(0, after.Samples).Select(s => after.Value(x, y, s)));
                if (mask.Covers(x, y, []))
                {
                    black.Add(now);
                    continue;
                }

                Assert.Equal(string.Join(' ', Enumerable.Range(0, before.Samples).Select(s => before.Value(x, y, s))), now);
            }
        }

        Assert.Single(black);
        Imaging.Frames.ImageFrame shown = await reader.FrameAsync(cleaned, frame);
        Assert.InRange(shown.Brightness(10, 10), 0, 1);
    }

    [Fact]
    public async Task Everything_outside_the_regions_is_masked_on_request_and_a_file_without_regions_is_refused()
    {
        await using DicomReader reader = new();
        DicomCleaner cleaner = new(reader, Key);
        string target = Path.Combine(oracle.Scratch, "outside.dcm");
        CleanedFile done = await cleaner.CleanAsync(await reader.ReadAsync(Path.Combine(oracle.Made, "explicit.dcm")), target, PixelMask.OutsideRegions);

        // make.py: the region holds columns 8 to 55 and rows 10 to 40 of 64 × 48.
        Assert.Equal((64 * 48) - (48 * 31), done.MaskedPixels);
        DicomFile plain = await reader.ReadAsync(Path.Combine(oracle.Made, "rgb.dcm"));
        Assert.Contains("no calibrated regions", (await Assert.ThrowsAsync<InputFaultException>(() => cleaner.CleanAsync(plain, target + "2", PixelMask.OutsideRegions))).Faults[0].Value, StringComparison.Ordinal);
        Assert.False(File.Exists(target + "2"));
        if (Places.OfReference("us/examples_ybr_color.dcm") is { } trap)
        {
            DicomFile shrunk = await reader.ReadAsync(trap);
            Assert.Contains("larger than the frame", (await Assert.ThrowsAsync<InputFaultException>(() => cleaner.CleanAsync(shrunk, target + "3", PixelMask.OutsideRegions))).Faults[0].Value, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task No_file_is_written_over_and_nothing_half_is_left()
    {
        await using DicomReader reader = new();
        string target = Path.Combine(oracle.Scratch, "there.dcm");
        await File.WriteAllTextAsync(target, "mine");
        DicomFile file = await reader.ReadAsync(Path.Combine(oracle.Made, "explicit.dcm"));
        Assert.Equal("(exists already)", (await Assert.ThrowsAsync<InputFaultException>(() => new DicomCleaner(reader, Key).CleanAsync(file, target))).Faults[0].Value);
        Assert.Equal("mine", await File.ReadAllTextAsync(target));
        Assert.Empty(Directory.GetFiles(oracle.Scratch, "*.part"));
    }

    private static IEnumerable<string> Left(string[][] old, string[][] cleaned, byte[] bytes)
    {
        string all = Encoding.Latin1.GetString(bytes);
        foreach (string[] element in cleaned)
        {
            uint tag = Convert.ToUInt32(element[0], 16);
            if (tag >> 16 != 2 && BasicProfile.Of(tag) == ProfileAction.Remove)
            {
                yield return $"{element[0]} is still there";
            }

            if (BasicProfile.Of(tag) == ProfileAction.Empty && element[2] is not ("" or "0" or "None"))
            {
                yield return $"{element[0]} still says {element[2]}";
            }
        }

        // Values that the profile removes or replaces must not stand in another place either.
        foreach (string[] element in old.Where(static e => Telling.Contains(e[1]) && BasicProfile.Of(Convert.ToUInt32(e[0], 16)) is not null))
        {
            if (element[2].Length >= 6 && !element[2].StartsWith("1.2.840.10008.", StringComparison.Ordinal) && !old.Any(o => o[2].Contains(element[2], StringComparison.Ordinal) && BasicProfile.Of(Convert.ToUInt32(o[0], 16)) is null)
                && all.Contains(element[2], StringComparison.Ordinal))
            {
                yield return $"{element[2]} of {element[0]} still stands in the file";
            }
        }
    }

    private static IEnumerable<string> Apart(OracleFile old, OracleFile found)
    {
        if (found.Unread is not null || found.Undecoded is not null || old.Written.Length != found.Written.Length)
        {
            yield return $"{old.Name}: the new file is not read: {found.Unread}{found.Undecoded}";
            yield break;
        }

        if (old.Regions.Length != found.Regions.Length || !old.Regions.SelectMany(static r => r).SequenceEqual(found.Regions.SelectMany(static r => r)))
        {
            yield return $"{old.Name}: regions differ";
        }

        for (int f = 0; f < old.Written.Length; f++)
        {
            long worst = old.Stored(f).Zip(found.Stored(f), static (a, b) => Math.Abs(a - b)).Max();
            if (worst > 0)
            {
                yield return $"{old.Name}: frame {f} differs by up to {worst}";
            }
        }
    }

    private static Dictionary<string, string[][]> Dump(string[] files) =>
        JsonSerializer.Deserialize<Dictionary<string, string[][]>>(OracleRun.Run("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "Oracle", "dump.py"), .. files]))!;
}
