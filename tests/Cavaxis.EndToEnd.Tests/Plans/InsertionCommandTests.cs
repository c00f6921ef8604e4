using System.Text.Json;
using System.Xml.Linq;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Plans;

public class InsertionCommandTests
{
    [Fact]
    public void A_study_tells_where_wires_end_with_intervals_and_cautions()
    {
        (ExitCode code, string written, _) = InProcess.Run("insertion", DemoCase.PathOf("tall-man-severe-lung-failure.json"), "--anatomies", "10", "--no-advice", "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument json = JsonDocument.Parse(written);
        JsonElement root = json.RootElement;
        Assert.True(root.GetProperty("invented").GetBoolean());
        Assert.Contains("not a certified medical device", root.GetProperty("caution").GetString(), StringComparison.Ordinal);
        Assert.NotEmpty(root.GetProperty("notChecked").EnumerateArray());
        foreach (JsonElement cannula in root.GetProperty("cannulae").EnumerateArray())
        {
            Assert.False(cannula.TryGetProperty("paths", out _));
            JsonElement right = cannula.GetProperty("right");
            Assert.InRange(right.GetProperty("value").GetDouble(), right.GetProperty("low").GetDouble(), right.GetProperty("high").GetDouble());
            Assert.Equal("calculated", right.GetProperty("origin").GetString());
            Assert.NotEmpty(cannula.GetProperty("wireEnds").EnumerateArray());
        }
    }

    [Fact]
    public void A_drawing_to_scale_is_written_and_says_what_it_is()
    {
        using WorkFolder folder = new();
        (ExitCode code, _, _) = InProcess.Run("insertion", DemoCase.Small, "--anatomies", "10", "--no-advice", "--drawing", folder["paths.svg"]);
        Assert.Equal(ExitCode.Done, code);
        string svg = File.ReadAllText(folder["paths.svg"]);
        Assert.Contains("not a certified medical device", string.Join(' ', XDocument.Parse(svg).Descendants().Where(static e => e.Name.LocalName == "text").Select(static e => e.Value)), StringComparison.Ordinal);
        Assert.Contains("[INVENTED CASE]", svg, StringComparison.Ordinal);
        Assert.Contains("5 cm", svg, StringComparison.Ordinal);
        Assert.True(svg.Split("<polyline").Length > 20 || svg.Split("<path").Length > 20);

        // The same study as a model in three dimensions: glTF begins with its magic word, STL has fifty bytes for each triangle.
        Assert.Equal(ExitCode.Done, InProcess.Run("insertion", DemoCase.Small, "--anatomies", "10", "--no-advice", "--drawing", folder["paths.glb"]).Code);
        Assert.Equal("glTF", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(folder["paths.glb"]), 0, 4));
        Assert.Equal(ExitCode.Done, InProcess.Run("insertion", DemoCase.Small, "--anatomies", "10", "--no-advice", "--drawing", folder["paths.stl"]).Code);
        byte[] stl = File.ReadAllBytes(folder["paths.stl"]);
        Assert.Equal(84 + (50 * BitConverter.ToInt32(stl, 80)), stl.Length);
        (ExitCode wrong, _, string complaints) = InProcess.Run("insertion", DemoCase.Small, "--anatomies", "10", "--drawing", folder["paths.gif"]);
        Assert.Equal(ExitCode.InputError, wrong);
        Assert.Contains("--drawing", complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_tells_how_every_plan_goes_in_and_its_report_draws_the_chosen_one()
    {
        using WorkFolder folder = new();
        (ExitCode code, string written, _) = InProcess.Run("plan", DemoCase.Small, "--quick", "--insertion", "10", "--json", "--report", folder["plan.html"]);
        Assert.True(code is ExitCode.Done or ExitCode.StopFound);
        using JsonDocument json = JsonDocument.Parse(written);
        foreach (JsonElement plan in json.RootElement.GetProperty("plans").EnumerateArray())
        {
            JsonElement glance = plan.GetProperty("insertion");
            Assert.Equal(10, glance.GetProperty("anatomies").GetInt32());
            Assert.InRange(glance.GetProperty("everyCannulaRight").GetProperty("value").GetDouble(), 0, 1);
        }

        string html = File.ReadAllText(folder["plan.html"]);
        Assert.Contains("How wire and cannula go in", html, StringComparison.Ordinal);
        Assert.Contains("Goes in", html, StringComparison.Ordinal);
        (ExitCode wrong, _, string complaints) = InProcess.Run("plan", DemoCase.Small, "--quick", "--insertion", "5");
        Assert.Equal(ExitCode.InputError, wrong);
        Assert.Contains("--insertion", complaints, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--wire", "supple", "floppy, standard, stiff, extra-stiff")]
    [InlineData("--anatomies", "3", "10 to 5000")]
    [InlineData("--plan", "99", "1 to ")]
    public void A_wrong_option_is_named_with_what_is_accepted(string option, string value, string accepted)
    {
        (ExitCode code, _, string complaints) = InProcess.Run("insertion", DemoCase.PathOf("tall-man-severe-lung-failure.json"), option, value);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains(option, complaints, StringComparison.Ordinal);
        Assert.Contains(accepted, string.Join(' ', complaints.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }
}
