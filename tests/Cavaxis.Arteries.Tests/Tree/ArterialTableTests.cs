using System.Text.Json.Nodes;
using Cavaxis.Arteries.Tree;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Tests.Tree;

public class ArterialTableTests
{
    private static readonly string Text = ReadText();

    [Fact]
    public void The_table_holds_more_than_fifty_segments_and_every_artery_that_is_asked_for()
    {
        ArterialTable table = ArterialTable.BuiltIn;
        Assert.True(table.Segments.Length >= 50, "segments");
        Assert.All(
            ["coronary_L", "coronary_R", "internal_carotid_R", "internal_carotid_L", "vertebral_R", "vertebral_L", "radial_R", "radial_L", "renal_R", "renal_L", "femoral_R_I", "femoral_L_I", "profunda_femoris_R", "profunda_femoris_L", "popliteal_R_I", "popliteal_L_I", "anterior_tibial_R", "posterior_tibial_L"],
            name => Assert.True(table.IndexOf(name) >= 0, name));
    }

    [Fact]
    public void Every_segment_of_the_drawing_begins_where_the_one_before_it_ends()
    {
        Dictionary<int, LayoutPoint> ends = [];
        foreach (ArterySegment s in ArterialTable.BuiltIn.Segments)
        {
            if (ends.TryGetValue(s.From, out LayoutPoint before))
            {
                Assert.Equal(before, s.Course[0]);
            }

            ends[s.To] = s.Course[^1];
        }
    }

    [Fact]
    public void The_right_arm_is_drawn_on_the_viewers_left() =>
        Assert.All(
            ArterialTable.BuiltIn.Segments.Where(static s => s.Name.StartsWith("radial", StringComparison.Ordinal)),
            static s => Assert.Equal(s.Name == "radial_R", s.Course[^1].X < 50));

    [Fact]
    public void The_licence_of_the_table_is_named_in_it() => Assert.Contains("Apache License", ArterialTable.BuiltIn.Notice, StringComparison.Ordinal);

    [Theory]
    [InlineData("lengthMm", -3.0, "segments[4].lengthMm")]
    [InlineData("proximalRadiusMm", 90.0, "segments[4].proximalRadiusMm")]
    [InlineData("from", 77, "segments[4].from")]
    [InlineData("name", "aortic_root", "segments[4].name")]
    [InlineData("territory", "Gut", "segments[4].territory")]
    public void A_segment_that_cannot_be_is_refused_by_name(string field, object value, string named)
    {
        JsonNode node = JsonNode.Parse(Text)!;
        node["segments"]![4]![field] = value switch
        {
            double d => JsonValue.Create(d),
            int i => JsonValue.Create(i),
            _ => JsonValue.Create((string)value),
        };
        InputFaultException fault = Assert.Throws<InputFaultException>(() => ArterialTableReader.Read(node.ToJsonString()));
        Assert.Contains(fault.Faults, f => f.Field == named);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{\"segments\": 3}")]
    [InlineData("{\"unknown\": 1}")]
    [InlineData("{\"segments\": []}")]
    public void Text_that_is_no_table_is_a_fault_of_the_input(string json) => Assert.Throws<InputFaultException>(() => ArterialTableReader.Read(json));

    private static string ReadText()
    {
        using Stream stream = typeof(ArterialTable).Assembly.GetManifestResourceStream("arteries.json")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
