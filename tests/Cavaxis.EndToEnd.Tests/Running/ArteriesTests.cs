using System.Text.Json;
using System.Xml.Linq;
using Cavaxis.Cli;
using Cavaxis.Cli.Commands;
using Cavaxis.EndToEnd.Tests.Programs;
using Json.Schema;

namespace Cavaxis.EndToEnd.Tests.Running;

public class ArteriesTests
{
    private const string Arterial = "running-veno-arterial.json";
    private const string Venous = "running-veno-venous.json";
    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaCommand.ArteriesSchema());

    [Fact]
    public void Running_support_is_told_organ_by_organ_and_passes_its_schema()
    {
        using JsonDocument answer = Json(0, Arterial, "--set", "shunt=0.5");
        JsonElement result = answer.RootElement.GetProperty("result");
        Assert.True(answer.RootElement.GetProperty("found").GetBoolean());
        Assert.Equal(3.8, result.GetProperty("pumpFlowLPerMin").GetDouble(), 0.05);
        Assert.Contains("left femoral", result.GetProperty("returnInWords").GetString(), StringComparison.Ordinal);
        Assert.True(Saturation(answer, "heart") <= Saturation(answer, "legLeft") + 0.5);
        Assert.True(Saturation(answer, "handRight") <= Saturation(answer, "handLeft") + 0.5);
        Assert.All(result.GetProperty("organs").EnumerateArray(), static o => Assert.InRange(o.GetProperty("saturationPercent").GetProperty("mean").GetDouble(), 20, 100));
        Assert.InRange(Math.Abs(result.GetProperty("settling").GetProperty("oxygenImbalance").GetDouble()), 0, 1e-6);
        JsonElement leg = Assert.Single(result.GetProperty("limbs").EnumerateArray(), static l => l.GetProperty("hasCannula").GetBoolean());
        Assert.Equal("left", leg.GetProperty("side").GetString());
        Assert.True(leg.GetProperty("withPerfusionMlPerMin").GetDouble() > leg.GetProperty("withoutPerfusionMlPerMin").GetDouble());
    }

    [Fact]
    public void More_pump_flow_brings_the_meeting_place_nearer_to_the_heart_and_a_stronger_heart_drives_it_away()
    {
        using JsonDocument answer = Json(0, Arterial, "--set", "shunt=0.5", "--flow", "1.5", "--flow", "4", "--strength", "1", "--strength", "4");
        double[] half = [.. answer.RootElement.GetProperty("sweep").EnumerateArray()
            .OrderBy(static p => p.GetProperty("contractilityFactor").GetDouble()).ThenBy(static p => p.GetProperty("pumpFlowLPerMin").GetDouble())
            .Select(static p => p.GetProperty("halfCm").GetProperty("mean").GetDouble())];
        Assert.Equal(4, half.Length);
        Assert.True(half[0] >= half[1] && half[2] >= half[3], string.Join(", ", half));
        Assert.True(half[2] >= half[0] && half[3] >= half[1], string.Join(", ", half));
        Assert.True(half[2] > half[1], string.Join(", ", half));
    }

    [Fact]
    public void The_terminal_says_where_they_meet_what_each_gets_and_that_it_is_no_device()
    {
        (ExitCode code, string written, _) = InProcess.Run("arteries", DemoCase.PathOf(Arterial));
        Assert.Equal(ExitCode.Done, code);
        foreach (string word in new[] { "ANSWER:", "right hand", "brain", "Legs", "Not part of the model", "not a certified medical device", "[INVENTED CASE]" })
        {
            Assert.Contains(word, written, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("safe", written, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_drawing_is_written_as_a_whole_file()
    {
        using WorkFolder folder = new();
        Assert.Equal(ExitCode.Done, InProcess.Run("arteries", DemoCase.PathOf(Arterial), "--drawing", folder["tree.svg"]).Code);
        XDocument drawing = XDocument.Load(folder["tree.svg"]);
        Assert.True(drawing.Descendants().Count(static e => e.Name.LocalName == "path") > 80);
        Assert.Contains("Half from each", drawing.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Venous_support_has_nothing_to_tell_and_says_why()
    {
        (ExitCode code, string written, _) = InProcess.Run("arteries", DemoCase.PathOf(Venous));
        Assert.Equal(ExitCode.StopFound, code);
        Assert.Contains("all arteries carry the same blood", written, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--flow", "much", "--flow")]
    [InlineData("--flow", "9", "0 to 8")]
    [InlineData("--strength", "-1", "--strength")]
    [InlineData("--plan", "0", "--plan")]
    [InlineData("--drawing", "tree.pdf", ".svg or .png")]
    [InlineData("--set", "nothing=1", "nothing")]
    public void A_wrong_option_is_named_with_what_is_accepted(string option, string value, string named)
    {
        (ExitCode code, _, string complaints) = InProcess.Run("arteries", DemoCase.PathOf(Arterial), option, value);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains(named, complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_is_told_before_and_after()
    {
        (ExitCode code, string written, _) = InProcess.Run("whatif", DemoCase.PathOf(Arterial), "--members", "8", "--change", "flow=2", "--arteries", "--json");
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument answer = JsonDocument.Parse(written);
        JsonElement change = answer.RootElement.GetProperty("arteries");
        JsonElement output = Assert.Single(change.GetProperty("rows").EnumerateArray(), static r => r.GetProperty("words").GetString() == "output of the heart");
        Assert.True(output.GetProperty("after").GetDouble() > output.GetProperty("before").GetDouble());
    }

    private static double Saturation(JsonDocument answer, string organ) => answer.RootElement.GetProperty("result").GetProperty("organs").EnumerateArray()
        .Single(o => o.GetProperty("organ").GetString() == organ).GetProperty("saturationPercent").GetProperty("mean").GetDouble();

    private static JsonDocument Json(int code, string demo, params string[] options)
    {
        (ExitCode ended, string written, string complaints) = InProcess.Run(["arteries", DemoCase.PathOf(demo), .. options, "--json"]);
        Assert.True(code == (int)ended, complaints);
        JsonDocument answer = JsonDocument.Parse(written);
        Assert.True(Schema.Evaluate(answer.RootElement).IsValid);
        return answer;
    }
}
