using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.ImageVerbs;

/// <summary>The verbs of images, on files that Debian's python3-pydicom brings and on those beside the repository.</summary>
public sealed class ImageVerbTests
{
    private const string Pydicom = "/usr/lib/python3/dist-packages/pydicom/data/test_files";

    private static readonly string Slice = Path.Combine(Pydicom, "CT_small.dcm");

    private static readonly string? Reference = FindReference();

    // CT_small.dcm as dcmdump shows it: CT, 128 × 128, 16 bits signed, spacing 0.661468, Patient's Name CompressedSamples^CT1, Patient ID 1CT1.
    [Fact]
    public void A_slice_is_shown_with_its_spacing_and_without_the_person()
    {
        Ended told = CavaxisProcess.Run("image", "info", Slice);
        Assert.Equal(0, told.ExitCode);
        Assert.Contains("a slice of computed tomography", told.Out, StringComparison.Ordinal);
        Assert.Contains("128 × 128 pixels, 1 frame", told.Out, StringComparison.Ordinal);
        Assert.Contains("0.6615 × 0.6615 mm", told.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("CompressedSamples", told.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("1CT1", told.Out, StringComparison.Ordinal);
        (ExitCode code, string json, string err) = InProcess.Run("image", "info", Slice, "--json");
        Assert.Equal((ExitCode.Done, string.Empty), (code, err));
        JsonElement image = JsonDocument.Parse(json).RootElement.GetProperty("images")[0];
        Assert.Equal(("tomographySlice", 128, 0.661468), (image.GetProperty("kind").GetString(), image.GetProperty("columns").GetInt32(), image.GetProperty("columnSpacingMm").GetDouble()));
        Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(Slice))), image.GetProperty("sha256").GetString());
        Assert.DoesNotContain("CompressedSamples", json, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_without_calibration_and_a_report_say_so()
    {
        Assert.Contains("no calibration", InProcess.Run("image", "info", Path.Combine(Pydicom, "ExplVR_BigEnd.dcm")).Out, StringComparison.Ordinal);
        Assert.Contains("no picture", InProcess.Run("image", "info", Path.Combine(Pydicom, "test-SR.dcm")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("MR_truncated.dcm", "ends before its pixels")]
    [InlineData("README.txt", "no complete DICOM")]
    [InlineData("not-there.dcm", "no such file")]
    public void What_cannot_be_read_is_an_input_error_with_a_remedy(string file, string reason)
    {
        (ExitCode code, string json, _) = InProcess.Run("image", "info", Path.Combine(Pydicom, file), "--json");
        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains(reason, JsonDocument.Parse(json).RootElement.GetProperty("faults")[0].GetProperty("value").GetString(), StringComparison.Ordinal);
    }

    // SOURCE.md of the reference images: a region larger than the image, one that ends one pixel outside, none at all, blank identifiers, feet first against the orientation.
    [Theory]
    [InlineData("us/examples_ybr_color.dcm", "shrunk 2 times")]
    [InlineData("us/OBXXXX1A.dcm", "ends one pixel outside")]
    [InlineData("us/color-pl.dcm", "no calibration")]
    [InlineData("ct/odd_headers", "blank")]
    [InlineData("ct/chest_lidc_half", "FFS")]
    public void Each_known_trap_is_named(string place, string words)
    {
        if (Reference is null)
        {
            return;
        }

        (ExitCode code, string told, string err) = InProcess.Run("image", "info", Path.Combine(Reference, place), "--json");
        Assert.True(code == ExitCode.Done, told + err);
        Assert.Contains(words, told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cleaned_slice_names_nobody_keeps_its_pixels_and_the_key_gives_the_same_hash_again()
    {
        using WorkFolder work = new();
        string key = work.Write("key", "an invented secret of this test");
        (ExitCode code, string json, string err) = InProcess.Run("image", "clean", Slice, "--out", work["one.dcm"], "--key", key, "--json");
        Assert.True(code == ExitCode.Done, json + err);
        string person = JsonDocument.Parse(json).RootElement.GetProperty("files")[0].GetProperty("person").GetString()!;
        Assert.Matches("^[0-9A-F]{16}$", person);
        string bytes = System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(work["one.dcm"]));
        Assert.DoesNotContain("CompressedSamples", bytes, StringComparison.Ordinal);
        Assert.Contains(person, bytes, StringComparison.Ordinal);
        Assert.Contains(person, InProcess.Run("image", "clean", Slice, "--out", work["two.dcm"], "--key", key, "--json").Out, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllBytes(work["one.dcm"]), File.ReadAllBytes(work["two.dcm"]));
        Assert.DoesNotContain(person, InProcess.Run("image", "clean", Slice, "--out", work["three.dcm"], "--json").Out, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputError, InProcess.Run("image", "clean", Slice, "--out", work["one.dcm"]).Code);
    }

    [Fact]
    public void A_folder_is_cleaned_into_numbers_and_what_is_no_image_is_named()
    {
        using WorkFolder work = new();
        string folder = Directory.CreateDirectory(work["in"]).FullName;
        File.Copy(Slice, Path.Combine(folder, "a person's name.dcm"));
        File.Copy(Path.Combine(Pydicom, "MR_small.dcm"), Path.Combine(folder, "b.dcm"));
        File.WriteAllText(Path.Combine(folder, "notes.txt"), "no image");
        (ExitCode code, string told, _) = InProcess.Run("image", "clean", folder, "--out", work["out"], "--mask", "0,0,10,5", "--json");
        Assert.Equal(ExitCode.StopFound, code);
        JsonElement sheet = JsonDocument.Parse(told).RootElement;
        Assert.Equal("notes.txt", sheet.GetProperty("leftOut")[0].GetProperty("file").GetString());
        Assert.Equal([50, 50], sheet.GetProperty("files").EnumerateArray().Select(static f => f.GetProperty("maskedPixels").GetInt32()));
        Assert.Equal(["0001.dcm", "0002.dcm"], Directory.GetFiles(work["out"]).Select(static f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.Equal(ExitCode.InputError, InProcess.Run("image", "clean", folder, "--out", work["out"]).Code);
    }

    [Theory]
    [InlineData("--mask", "1,2,3")]
    [InlineData("--mask", "a,2,3,4")]
    [InlineData("--mask", "0,0,0,4")]
    [InlineData("--mask", "outside-regions")]
    [InlineData("--key", "/not/there")]
    public void An_option_that_cannot_be_used_is_named(string option, string value)
    {
        using WorkFolder work = new();
        (ExitCode code, string json, _) = InProcess.Run("image", "clean", Slice, "--out", work["x.dcm"], option, value, "--json");
        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains("faults", json, StringComparison.Ordinal);
        Assert.False(File.Exists(work["x.dcm"]));
    }

    private static string? FindReference()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string here = Path.Combine(at.FullName, "shared", "reference", "imaging");
            if (Directory.Exists(here))
            {
                return here;
            }
        }

        return null;
    }
}
