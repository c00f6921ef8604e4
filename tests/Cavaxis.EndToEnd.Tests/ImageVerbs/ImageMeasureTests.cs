using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.ImageVerbs;

/// <summary>Measuring by command, on the files beside the repository whose truth is stated there, and on slips of the hand.</summary>
public sealed class ImageMeasureTests
{
    private static readonly string? Reference = FindReference();

    [Theory]
    [InlineData("us_synth/synth_bmode_colour_pw.dcm", "distance", 13.6, 0.01, "--distance 126,75 194,75")]
    [InlineData("us_synth/synth_bmode_colour_pw.dcm", "area", 1.453, 0.03, "--area 160,41 184,51 194,75 184,99 160,109 136,99 126,75 136,51")]
    [InlineData("us_synth/synth_bmode_colour_pw.dcm", "angle", 90, 0.01, "--angle 126,75 160,75 160,109")]
    [InlineData("us_synth/synth_bmode_colour_pw.dcm", "curvedDistance", 13.6, 0.01, "--curve 126,75 160,75 194,75")]
    [InlineData("us_synth/synth_bmode_colour_pw.dcm", "velocityTimeIntegral", 18, 0.4, "--vti")]
    public void What_is_known_of_the_synthetic_still_is_measured(string file, string kind, double truth, double bound, string asked)
    {
        if (Of(file, asked) is not (ExitCode code, JsonElement sheet))
        {
            return;
        }

        Assert.Equal(ExitCode.Done, code);
        JsonElement measured = sheet.GetProperty("measurements")[0];
        Assert.Equal(kind, measured.GetProperty("kind").GetString());
        Assert.Equal(truth, measured.GetProperty("value").GetProperty("value").GetDouble(), bound);
        Assert.True(measured.GetProperty("value").GetProperty("sd").GetDouble() > 0);
        Assert.Equal("region", measured.GetProperty("scale").GetString());
        Assert.Equal(64, sheet.GetProperty("fileSha256").GetString()!.Length);
    }

    [Fact]
    public void The_vein_of_the_loop_is_followed_both_ways_from_the_frame_of_the_points()
    {
        if (Of("us_synth/synth_10frame_ivc_pw.dcm", "--breath --frame 6 118,75 202,75") is not (ExitCode code, JsonElement sheet))
        {
            return;
        }

        Assert.Equal(ExitCode.Done, code);
        JsonElement breath = sheet.GetProperty("breath");
        Assert.Equal((10, 6, 1), (breath.GetProperty("diameters").GetArrayLength(), breath.GetProperty("widestFrame").GetInt32(), breath.GetProperty("narrowestFrame").GetInt32()));
        Assert.Equal(23.8, breath.GetProperty("collapsibilityPercent").GetProperty("value").GetDouble(), 0.7);
        Assert.Equal(0.9, breath.GetProperty("secondsSeen").GetDouble(), 1e-9);
    }

    [Fact]
    public void A_shrunk_image_is_not_measured_before_a_person_decides_and_then_says_so()
    {
        const string File = "us/examples_ybr_color.dcm";
        if (Of(File, "--distance 100,100 100,150") is not (ExitCode code, JsonElement refused))
        {
            return;
        }

        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains("640 by 480", refused.GetProperty("faults")[0].GetProperty("remedy").GetString(), StringComparison.Ordinal);
        (_, JsonElement sheet) = Of(File, "--distance 100,100 100,150 --confirm-shrink 1=2")!.Value;
        JsonElement measured = sheet.GetProperty("measurements")[0];
        Assert.Equal(51.05, measured.GetProperty("value").GetProperty("value").GetDouble(), 0.01);
        Assert.Equal("confirmedRegion", measured.GetProperty("scale").GetString());
        Assert.Contains("by decision of a person", measured.GetProperty("remarks")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_image_without_calibration_is_measured_only_by_a_known_length()
    {
        const string File = "us/color-pl.dcm";
        if (Of(File, "--distance 60,20 60,70") is not (ExitCode code, JsonElement refused))
        {
            return;
        }

        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains("known length", refused.GetProperty("faults")[0].GetProperty("remedy").GetString(), StringComparison.Ordinal);
        (_, JsonElement sheet) = Of(File, "--distance 60,20 60,70 --known-length-mm 20 --known 10,10 --known 110,10")!.Value;
        JsonElement measured = sheet.GetProperty("measurements")[0];
        Assert.Equal(10, measured.GetProperty("value").GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal("knownLength", measured.GetProperty("scale").GetString());
        Assert.Contains("No calibration of the file is used", measured.GetProperty("remarks")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_real_program_tells_it_in_words_with_unit_and_error()
    {
        if (Reference is null)
        {
            return;
        }

        Ended told = CavaxisProcess.Run("image", "measure", Path.Combine(Reference, "us", "OBXXXX1A.dcm"), "--distance", "300,300", "400,400");
        Assert.Equal(0, told.ExitCode);
        Assert.Contains("one pixel outside", told.Out, StringComparison.Ordinal);
        Assert.Contains("distance (frame 1): 37.09 ± ", told.Out, StringComparison.Ordinal);
        Assert.Contains("No certified", string.Join(' ', told.Out.Split('\n')), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("command line", "")]
    [InlineData("command line", "--distance --area 1,1 2,2")]
    [InlineData("--known", "--distance 1,1 2,2 --known-length-mm 20 --known 5,5")]
    [InlineData("--known-length-mm", "--distance 1,1 2,2 --known 5,5")]
    [InlineData("POINTS", "--distance 1,1")]
    [InlineData("POINTS", "--distance 1;1 2,2")]
    [InlineData("POINTS", "--angle 1,1 2,2")]
    [InlineData("--frame", "--distance 1,1 2,2 --frame 2")]
    [InlineData("--confirm-shrink", "--distance 1,1 2,2 --confirm-shrink 2")]
    [InlineData("region", "--distance 1,1 2,2 --confirm-shrink 1=2")]
    [InlineData("caliper.placementSdPx", "--distance 1,1 2,2 --placement-px -1")]
    [InlineData("--region", "--vti")]
    public void A_slip_names_the_option_and_what_is_accepted(string field, string asked)
    {
        // A picture of Debian's python3-pydicom without calibration.
        string file = "/usr/lib/python3/dist-packages/pydicom/data/test_files/ExplVR_BigEnd.dcm";
        (ExitCode code, string json, _) = InProcess.Run(["image", "measure", file, .. Words(asked), "--json"]);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Equal(field, Faults.Of(json)[0].Field);
    }

    [Fact]
    public void The_tip_follows_from_the_return_port()
    {
        string file = DemoCase.PathOf("tall-man-severe-lung-failure.json");
        const string Asked = "--device bicaval-27fr-29cm --landmark scaj --side feet --distance-mm 20 --distance-sd-mm 0 --tilt-sd-deg 0 --along-vein --edge appendageBorder --entry rightNeck --course alongAxis --depth-mm 250";
        (ExitCode code, string json, _) = InProcess.Run(["image", "tip", file, .. Words(Asked), "--seen", "return port", "--json"]);
        Assert.Equal(ExitCode.Done, code);
        JsonElement sheet = JsonDocument.Parse(json).RootElement;
        Assert.Equal(94, sheet.GetProperty("partFromTipMm").GetDouble());
        JsonElement scaj = sheet.GetProperty("fromLandmarks").EnumerateArray().Single(static d => d.GetProperty("landmark").GetString() == "scaj").GetProperty("belowMm");

        // Along the axis from the port: 20 + 94.
        Assert.Equal(114, scaj.GetProperty("value").GetDouble(), 1e-9);
        Assert.Equal(1, sheet.GetProperty("zones").EnumerateArray().Sum(static z => z.GetProperty("share").GetProperty("value").GetDouble()), 1e-9);
        Assert.Contains("tip from", InProcess.Run(["image", "tip", file, .. Words(Asked), "--seen", "return port"]).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--seen", "--landmark scaj --side feet --distance-mm 20 --entry rightNeck")]
    [InlineData("--side", "--seen tip --landmark scaj --distance-mm 20 --entry rightNeck")]
    [InlineData("--landmark", "--seen tip --side feet --distance-mm 20 --entry rightNeck")]
    [InlineData("landmark", "--seen tip --landmark rightNeckSkin --side feet --distance-mm 20 --entry rightNeck")]
    [InlineData("--entry", "--seen tip --landmark scaj --side feet --distance-mm 20 --entry chest")]
    [InlineData("--distance-mm", "--seen tip --landmark scaj --side feet --entry rightNeck")]
    [InlineData("--device", "--seen stage --landmark scaj --side feet --distance-mm 20 --entry rightNeck")]
    [InlineData("feature", "--seen stage --device bicaval-27fr-29cm --landmark scaj --side feet --distance-mm 20 --entry rightNeck")]
    [InlineData("superiorEdge", "--seen tip --landmark scaj --edge eustachianRim --side feet --distance-mm 20 --entry rightNeck")]
    public void A_question_about_the_tip_that_cannot_be_asked_is_refused_by_name(string field, string asked)
    {
        (ExitCode code, string json, _) = InProcess.Run(["image", "tip", DemoCase.PathOf("tall-man-severe-lung-failure.json"), .. Words(asked), "--json"]);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Equal(field, Faults.Of(json)[0].Field);
    }

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static (ExitCode Code, JsonElement Sheet)? Of(string file, string asked)
    {
        if (Reference is null)
        {
            return null;
        }

        (ExitCode code, string json, _) = InProcess.Run(["image", "measure", Path.Combine(Reference, file), .. Words(asked), "--json"]);
        return (code, JsonDocument.Parse(json).RootElement);
    }

    private static string? FindReference()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            string folder = Path.Combine(at.FullName, "shared", "reference", "imaging");
            if (Directory.Exists(folder))
            {
                return folder;
            }
        }

        return null;
    }
}
