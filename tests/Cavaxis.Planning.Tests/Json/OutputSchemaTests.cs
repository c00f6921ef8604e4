using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;
using Json.Schema;

namespace Cavaxis.Planning.Tests.Json;

public class OutputSchemaTests
{
    private enum Grade
    {
        None,
        VeryHigh,
    }

    private sealed record Leaf(string Name, Grade Grade);

    private sealed record Result(
        int Version,
        ulong Seed,
        bool Sure,
        double Share,
        double? PerhapsShare,
        string Text,
        string? PerhapsText,
        Grade? PerhapsGrade,
        Estimate DepthCm,
        Estimate? PerhapsDepthCm,
        Source Source,
        Leaf Leaf,
        Leaf? PerhapsLeaf,
        IReadOnlyList<Leaf> Leaves,
        IReadOnlyList<double> Numbers,
        IReadOnlyDictionary<string, double> ByName,
        Dictionary<Grade, Leaf> ByGrade,
        Result? Next)
    {
        public int LeafCount => Leaves.Count;
    }

    private static readonly Result Full = new(
        1, 18_000_000_000_000_000_000, true, 0.1, 0.2, "é < °", "x", Grade.VeryHigh, Estimate.Normal(30, 1, Origin.Measured),
        Estimate.Normal(1, 0, Origin.Estimated), new Source("Somebody 1990", Certainty.FromMemory), new Leaf("a", Grade.None), new Leaf("b", Grade.VeryHigh),
        [new("c", Grade.None)], [1, 2], new Dictionary<string, double> { ["Side Holes"] = 0.7 }, new() { [Grade.VeryHigh] = new("d", Grade.None) },
        null);

    private static readonly Result Bare = Full with
    {
        PerhapsShare = null,
        PerhapsText = null,
        PerhapsGrade = null,
        PerhapsDepthCm = null,
        PerhapsLeaf = null,
        Leaves = [],
        Next = Full,
    };

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaWriter.Output<Result>("Result"));

    [Fact]
    public void What_is_written_passes_the_schema()
    {
        Assert.True(Passes(Written(Full)));
        Assert.True(Passes(Written(Bare)));
    }

    [Theory]
    [InlineData("share", "\"0.1\"")]
    [InlineData("share", "null")]
    [InlineData("text", "null")]
    [InlineData("version", "1.5")]
    [InlineData("sure", "1")]
    [InlineData("perhapsGrade", "\"VeryHigh\"")]
    [InlineData("perhapsShare", "\"x\"")]
    [InlineData("depthCm", "30")]
    [InlineData("depthCm", "null")]
    [InlineData("source", "{\"citation\":\"x\",\"certainty\":\"sure\"}")]
    [InlineData("leaf", "{\"name\":\"a\"}")]
    [InlineData("leaves", "[1]")]
    [InlineData("numbers", "[\"1\"]")]
    [InlineData("byName", "{\"a\":\"b\"}")]
    [InlineData("byGrade", "{\"low\":{\"name\":\"a\",\"grade\":\"none\"}}")]
    [InlineData("extra", "1")]
    public void What_is_written_otherwise_fails_it(string field, string value)
    {
        JsonNode root = Written(Full);
        root[field] = JsonNode.Parse(value);
        Assert.False(Passes(root));
    }

    [Fact]
    public void What_is_left_out_fails_it()
    {
        foreach (string field in Written(Full).AsObject().Select(static p => p.Key).ToList())
        {
            JsonNode root = Written(Full);
            root.AsObject().Remove(field);
            Assert.False(Passes(root), field);
        }
    }

    [Fact]
    public void Results_are_written_in_camel_case_with_words_for_enums_line_feeds_and_letters_as_they_are()
    {
        string text = JsonSerializer.Serialize(Full, CavaxisJson.Options);
        Assert.DoesNotContain('\r', text);
        Assert.Contains("\n  \"text\": \"é < °\",\n", text, StringComparison.Ordinal);
        Assert.Contains("\"perhapsGrade\": \"veryHigh\"", text, StringComparison.Ordinal);
        Assert.Contains("\"origin\": \"measured\"", text, StringComparison.Ordinal);
        Assert.Contains("\"certainty\": \"fromMemory\"", text, StringComparison.Ordinal);
        Assert.Contains("\"Side Holes\": 0.7", text, StringComparison.Ordinal);
        Assert.Contains("\"veryHigh\": {", text, StringComparison.Ordinal);
        Assert.Contains("\"next\": null", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_estimate_is_value_sd_low_high_and_origin() => Assert.Equal(
        ["value", "sd", "low", "high", "origin"],
        Written(Full)["depthCm"]!.AsObject().Select(static p => p.Key));

    [Fact]
    public void A_number_that_is_not_finite_is_never_written() => Assert.Throws<ArgumentException>(
        static () => JsonSerializer.Serialize(Full with { Share = double.NaN }, CavaxisJson.Options));

    private static JsonNode Written(Result result) => JsonSerializer.SerializeToNode(result, CavaxisJson.Options)!;

    private static bool Passes(JsonNode node)
    {
        using JsonDocument document = JsonDocument.Parse(node.ToJsonString());
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
