using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.EndToEnd.Tests.Programs;
using Json.Schema;
using SkiaSharp;

namespace Cavaxis.EndToEnd.Tests.Running;

public class CirculationTests
{
    private const string Venous = "running-veno-venous.json";
    private const string Arterial = "running-veno-arterial.json";
    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaCommand.CirculationSchema());

    [Fact]
    public void Veno_venous_support_is_told_with_recirculation_loops_and_a_closed_oxygen_budget()
    {
        using JsonDocument answer = Json(0, Venous);
        JsonElement root = answer.RootElement;
        JsonElement recirculation = root.GetProperty("recirculation");
        double mean = recirculation.GetProperty("meanPercent").GetDouble();
        Assert.InRange(mean, recirculation.GetProperty("lowestPercent").GetDouble(), recirculation.GetProperty("highestPercent").GetDouble());
        JsonElement oxygen = root.GetProperty("oxygen");
        Assert.InRange(Math.Abs(oxygen.GetProperty("errorMlPerMin").GetDouble()), 0, 1e-3);
        Assert.True(oxygen.GetProperty("fromMembraneMlPerMin").GetDouble() > 20);
        int count = root.GetProperty("breath").GetProperty("count").GetInt32();
        Assert.All(root.GetProperty("breath").GetProperty("signals").EnumerateArray(), s => Assert.Equal(count, s.GetProperty("values").GetArrayLength()));
        Assert.Equal(count, root.GetProperty("leftVentricleLoop").GetProperty("volumeMl").GetArrayLength());
        Assert.True(root.GetProperty("leftVentricleLoop").GetProperty("workMmHgMl").GetDouble() > 0);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("overTime").ValueKind);
    }

    [Fact]
    public void Less_flow_to_the_artery_unloads_the_ventricle_and_opens_the_valve_longer()
    {
        using JsonDocument much = Json(0, Arterial);
        using JsonDocument little = Json(0, Arterial, "--set", "flow=2");
        Assert.Equal(2, Quantity(little, "pumpFlowLPerMin"), 0.1);
        Assert.True(Quantity(little, "aorticValveOpenPercent") > Quantity(much, "aorticValveOpenPercent"));
        Assert.True(Quantity(little, "meanArterialPressureMmHg") < Quantity(much, "meanArterialPressureMmHg"));
        Assert.Equal(JsonValueKind.Null, much.RootElement.GetProperty("recirculation").ValueKind);
        JsonElement change = Assert.Single(little.RootElement.GetProperty("changes").EnumerateArray());
        Assert.Equal("targetFlowLPerMin", change.GetProperty("name").GetString());
    }

    [Fact]
    public void A_loss_of_blood_is_followed_over_time()
    {
        using JsonDocument answer = Json(0, Venous, "--set", "bloodVolume=-400", "--seconds", "20");
        JsonElement run = answer.RootElement.GetProperty("overTime");
        Assert.Equal(20, run.GetProperty("lengthS").GetDouble(), 1e-6);
        double[] pressure = [.. run.GetProperty("signals").EnumerateArray().Single(static s => s.GetProperty("name").GetString() == "arterialPressure")
            .GetProperty("values").EnumerateArray().Select(static v => v.GetDouble())];
        Assert.True(pressure[^250..].Average() < pressure[..50].Average());
    }

    [Fact]
    public void A_case_without_support_has_no_numbers_of_a_circuit()
    {
        using JsonDocument answer = Json(0, "small-woman-cardiogenic-shock.json");
        Assert.DoesNotContain(answer.RootElement.GetProperty("quantities").EnumerateArray(), static q => q.GetProperty("name").GetString() == "inletPressureMmHg");
        Assert.Equal(JsonValueKind.Null, answer.RootElement.GetProperty("patient").GetProperty("circuit").ValueKind);
    }

    [Fact]
    public void The_text_says_what_was_assumed_within_the_width_and_draws_the_picture()
    {
        using WorkFolder work = new();
        Ended ended = CavaxisProcess.Run("circulation", DemoCase.PathOf(Venous), "--plot", work["sheet.svg"]);
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        Assert.StartsWith("Veno-venous support running, saturation lower than expected  [INVENTED CASE]\nSupports trained clinicians; not a certified medical device.", ended.Out, StringComparison.Ordinal);
        foreach (string part in new[] { "ANSWER: ", "Recirculation: ", "does not add up by", "Assumed, because the case does not say", "Not checked" })
        {
            Assert.Contains(part, ended.Out, StringComparison.Ordinal);
        }

        Assert.All(ended.Lines, static line => Assert.True(line.Length <= CommandOutput.Width, line));
        XDocument picture = XDocument.Load(work["sheet.svg"]);
        string words = string.Join('|', picture.Descendants().Where(static e => e.Name.LocalName == "text").Select(static e => e.Value));
        Assert.Contains("Pressure-volume loops of the ventricles", words, StringComparison.Ordinal);
        Assert.Contains("Recirculation (%)", words, StringComparison.Ordinal);
        Assert.Contains("INVENTED CASE", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_png_shows_the_drawing_of_the_svg_at_its_size()
    {
        using WorkFolder work = new();
        Ended ended = CavaxisProcess.Run("circulation", DemoCase.PathOf(Venous), "--plot", work["sheet.png"]);
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        Assert.Contains("sheet.png", ended.Out, StringComparison.Ordinal);
        Assert.Equal(0, CavaxisProcess.Run("circulation", DemoCase.PathOf(Venous), "--plot", work["sheet.svg"]).ExitCode);
        byte[] file = File.ReadAllBytes(work["sheet.png"]);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], file[..8]);
        using SKBitmap picture = SKBitmap.Decode(file);
        XElement svg = XDocument.Load(work["sheet.svg"]).Root!;
        double Mm(string side) => double.Parse(svg.Attribute(side)!.Value.Replace("mm", string.Empty, StringComparison.Ordinal), CultureInfo.InvariantCulture);
        double scale = picture.Width / Mm("width");
        Assert.InRange(scale, 6, 12);
        Assert.Equal(Mm("height") * scale, picture.Height, 2.0);

        // Right of and above the foot of each word of the SVG, where a letter stands, the PNG has ink too.
        XElement[] words = [.. svg.Descendants().Where(static e => e.Name.LocalName == "text" && e.Attribute("text-anchor") is null && e.Attribute("transform") is null)];
        Assert.True(words.Length > 20);
        Assert.All(words, word =>
        {
            double At(string name) => scale * double.Parse(word.Attribute(name)!.Value, CultureInfo.InvariantCulture);
            (int left, int foot, int size) = ((int)At("x"), (int)At("y"), (int)At("font-size"));
            Assert.Contains(
                Enumerable.Range(left, size).SelectMany(x => Enumerable.Range(foot - size, size).Select(y => picture.GetPixel(x, y))), static c => c.Red + c.Green + c.Blue < 500);
        });
    }

    [Fact]
    public void The_numbers_of_the_model_are_listed_with_and_without_a_case()
    {
        Ended table = CavaxisProcess.Run("circulation", "--parameters");
        Assert.Equal((0, string.Empty), (table.ExitCode, table.Complaints));
        Assert.Contains("peepCmH2O", table.Out, StringComparison.Ordinal);
        Ended own = CavaxisProcess.Run("circulation", DemoCase.PathOf(Venous), "--parameters", "--set", "peep=5", "--json");
        using JsonDocument answer = JsonDocument.Parse(own.Out);
        JsonElement peep = answer.RootElement.GetProperty("parameters").EnumerateArray().Single(static p => p.GetProperty("name").GetString() == "peepCmH2O");
        Assert.Equal(5, peep.GetProperty("value").GetDouble());
        Assert.All(answer.RootElement.GetProperty("parameters").EnumerateArray(), static p => Assert.NotEmpty(p.GetProperty("source").GetString()!));
    }

    [Fact]
    public void What_does_not_come_to_rest_is_told_and_no_number_is_printed_as_a_result()
    {
        // No ventilation and no sweep gas: carbon dioxide rises for ever.
        using WorkFolder work = new();
        string[] changes = ["--set", "ventilation=0", "--set", "sweep=0"];
        using (JsonDocument answer = Json(1, Venous, changes))
        {
            JsonElement root = answer.RootElement;
            Assert.False(root.GetProperty("settled").GetBoolean());
            Assert.Contains("did not come to rest", root.GetProperty("reason").GetString(), StringComparison.Ordinal);
            foreach (string none in new[] { "recirculation", "aorticValveOpenPercent", "leftVentricleLoop", "rightVentricleLoop", "oxygen", "breath", "overTime" })
            {
                Assert.Equal(JsonValueKind.Null, root.GetProperty(none).ValueKind);
            }

            Assert.Empty(root.GetProperty("quantities").EnumerateArray());
            Assert.Empty(root.GetProperty("extremes").EnumerateArray());
        }

        Ended told = CavaxisProcess.Run(["circulation", DemoCase.PathOf(Venous), .. changes, "--plot", work["sheet.png"]]);
        Assert.Equal((1, string.Empty), (told.ExitCode, told.Complaints));
        Assert.Contains("NOT SETTLED: ", told.Out, StringComparison.Ordinal);
        Assert.Contains("No picture was written", told.Out, StringComparison.Ordinal);
        Assert.False(File.Exists(work["sheet.png"]));
        Assert.DoesNotContain("ANSWER", told.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("(calculated)", told.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("mmHg", told.Out[..told.Out.IndexOf("Assumed, because", StringComparison.Ordinal)], StringComparison.Ordinal);
    }

    [Fact]
    public void A_resistance_without_a_flow_is_not_defined_and_says_why()
    {
        string[] weak = ["--set", "contractility=0.05", "--set", "rightContractility=0.05"];
        using JsonDocument answer = Json(0, Arterial, weak);
        JsonElement lungs = answer.RootElement.GetProperty("quantities").EnumerateArray().Single(static q => q.GetProperty("name").GetString() == "pulmonaryResistanceWoodUnits");
        Assert.Equal(JsonValueKind.Null, lungs.GetProperty("value").ValueKind);
        Assert.Contains("flow through the lungs is about zero", lungs.GetProperty("notDefined").GetString(), StringComparison.Ordinal);
        Assert.InRange(Quantity(answer, "systemicResistanceWoodUnits"), 1, 50);
        Ended told = CavaxisProcess.Run(["circulation", DemoCase.PathOf(Arterial), .. weak]);
        Assert.Contains("– pulmonary resistance: not defined, ", told.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", told.Out, StringComparison.Ordinal);
        using JsonDocument usual = Json(0, Arterial);
        Assert.InRange(Quantity(usual, "pulmonaryResistanceWoodUnits"), 0.1, 20);
    }

    [Theory]
    [InlineData("unknownField", "--set", "moon=1")]
    [InlineData("outOfRange", "--set", "peepCmH2O=99")]
    [InlineData("wrongKind", "--set", "flow=fast")]
    [InlineData("badOption", "--set", "flow")]
    [InlineData("badOption", "--seconds", "0")]
    [InlineData("badOption", "--seconds", "soon")]
    [InlineData("badOption", "--plot", "sheet.gif")]
    [InlineData("unreadableFile", "--plot", "no-such-folder/sheet.png")]
    [InlineData("unreadableFile", "--plot", "no-such-folder/sheet.svg")]
    [InlineData("unreadableFile", "--catalogue", "missing.json")]
    public void What_cannot_be_used_is_refused_with_one_typed_fault(string code, string option, string value)
    {
        Ended ended = CavaxisProcess.Run("circulation", DemoCase.PathOf(Venous), option, value, "--json");
        Assert.Equal(code, Faults.Only(ended).Code);
    }

    [Fact]
    public void A_missing_or_unreadable_case_is_refused()
    {
        Assert.Equal("badOption", Faults.Only(CavaxisProcess.Run("circulation", "--json")).Code);
        Assert.Equal("unreadableFile", Faults.Only(CavaxisProcess.Run("circulation", "missing.json", "--json")).Code);
        using WorkFolder work = new();
        string unknown = File.ReadAllText(DemoCase.PathOf(Venous)).Replace("drain-multi-25fr-55cm", "drain-of-nobody", StringComparison.Ordinal);
        (string code, string field, _, _) = Faults.Only(CavaxisProcess.Run("circulation", work.Write("case.json", unknown), "--json"));
        Assert.Equal(("notFound", "running.cannulae[0].device"), (code, field));
    }

    private static JsonDocument Json(int exitCode, string name, params string[] options)
    {
        Ended ended = CavaxisProcess.Run(["circulation", DemoCase.PathOf(name), .. options, "--json"], new Dictionary<string, string>());
        Assert.Equal((exitCode, string.Empty), (ended.ExitCode, ended.Complaints));
        JsonDocument answer = JsonDocument.Parse(ended.Out);
        Assert.True(Schema.Evaluate(answer.RootElement).IsValid);
        return answer;
    }

    private static double Quantity(JsonDocument answer, string name) =>
        answer.RootElement.GetProperty("quantities").EnumerateArray().Single(q => q.GetProperty("name").GetString() == name).GetProperty("value").GetDouble();
}
