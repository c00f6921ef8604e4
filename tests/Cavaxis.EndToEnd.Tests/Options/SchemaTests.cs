using Cavaxis.Cli.Commands;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Tests.Case;
using Json.Schema;

namespace Cavaxis.EndToEnd.Tests.Options;

public class SchemaTests
{
    [Fact]
    public void The_published_schema_of_a_plan_is_what_the_types_give_now() =>
        PublishedText.Check("plan.schema.json", static _ => SchemaCommand.PlanSchema());

    [Fact]
    public void The_published_schema_of_a_rule_book_is_what_the_types_give_now() =>
        PublishedText.Check("rules.schema.json", static _ => RuleBookReader.Schema());

    [Fact]
    public void The_published_schema_of_a_circulation_is_what_the_types_give_now() =>
        PublishedText.Check("circulation.schema.json", static _ => SchemaCommand.CirculationSchema());

    [Fact]
    public void The_published_schema_of_a_calibration_is_what_the_types_give_now() =>
        PublishedText.Check("calibration.schema.json", static _ => SchemaCommand.CalibrationSchema());

    [Fact]
    public void The_published_schema_of_a_what_if_is_what_the_types_give_now() =>
        PublishedText.Check("whatif.schema.json", static _ => SchemaCommand.WhatIfSchema());

    [Fact]
    public void The_published_schema_of_an_insertion_study_is_what_the_types_give_now() =>
        PublishedText.Check("insertion.schema.json", static _ => SchemaCommand.InsertionSchema());

    [Fact]
    public void The_published_schema_of_the_arteries_is_what_the_types_give_now() =>
        PublishedText.Check("arteries.schema.json", static _ => SchemaCommand.ArteriesSchema());

    [Fact]
    public void The_published_schemas_of_rapid_mode_are_what_the_types_give_now()
    {
        PublishedText.Check("rapid.schema.json", static _ => SchemaCommand.RapidSchema());
        PublishedText.Check("rapid-criteria.schema.json", static _ => RapidCriteriaReader.Schema());
    }

    [Theory]
    [InlineData("rapid")]
    [InlineData("rapid-criteria")]
    [InlineData("scene")]
    [InlineData("insertion")]
    [InlineData("arteries")]
    [InlineData("circulation")]
    [InlineData("calibration")]
    [InlineData("whatif")]
    [InlineData("case")]
    [InlineData("plan")]
    [InlineData("rules")]
    public void The_program_prints_the_published_schema(string which) => Assert.Equal(
        File.ReadAllBytes(Path.Combine(RepositoryFolder.Docs, $"{which}.schema.json")), CavaxisProcess.Run("schema", which).OutBytes);

    [Fact]
    public void The_built_in_rule_book_passes_its_schema_and_a_changed_word_does_not()
    {
        JsonSchema schema = JsonSchema.FromText(RuleBookReader.Schema());
        string text = File.ReadAllText(Path.Combine(RepositoryFolder.Root, "catalogue", "rulebook.json"));
        Assert.True(Passes(schema, text));
        Assert.False(Passes(schema, text.Replace("\"fromMemory\"", "\"certain\"", StringComparison.Ordinal)));
    }

    private static bool Passes(JsonSchema schema, string text)
    {
        using System.Text.Json.JsonDocument json = System.Text.Json.JsonDocument.Parse(text);
        return schema.Evaluate(json.RootElement).IsValid;
    }
}
