using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.Cli.Commands;
using Cavaxis.EndToEnd.Tests.Plans;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Tests.Case;
using Json.Schema;

namespace Cavaxis.EndToEnd.Tests.RapidVerbs;

public sealed class RapidVerbTests : IDisposable
{
    private static readonly string[] Three = ["rapid", "--age", "54", "--sex", "male", "--weight", "85"];

    private readonly WorkFolder work = new();

    public void Dispose() => work.Dispose();

    [Fact]
    public void Three_inputs_give_clock_plan_criteria_rows_and_everything_unknown()
    {
        (ExitCode code, string text, string complaints) = InProcess.Run(Three);
        Assert.Equal((ExitCode.Done, string.Empty), (code, complaints));
        Assert.All(
            ["not a certified medical device", "CLOCK:", "PLAN: V-A femoral", "Unknown, and what was used instead", "patient.heightCm", "No verdict is given", "never multiplied", "SMALL NUMBER", "from memory"],
            word => Assert.Contains(word, string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal));
        Assert.DoesNotMatch(Words.Safe, text);
        Assert.All(text.Split('\n'), static line => Assert.True(line.TrimEnd().Length <= 100, line));
    }

    [Fact]
    public void The_json_passes_the_published_schema_and_carries_the_caution()
    {
        (ExitCode code, string text, _) = InProcess.Run([.. Three, "--no-flow", "2", "--low-flow", "40", "--to-flow", "25", "--answer", "witnessed=yes", "--answer", "firstRhythm=shockable", "--vessel", "commonFemoralVein.right=10", "--json"]);
        Assert.Equal(ExitCode.Done, code);
        using JsonDocument json = JsonDocument.Parse(text);
        Assert.True(JsonSchema.FromText(SchemaCommand.RapidSchema()).Evaluate(json.RootElement).IsValid);
        Assert.Contains("not a certified medical device", json.RootElement.GetProperty("caution").GetString(), StringComparison.Ordinal);
        Assert.Equal("65 min", json.RootElement.GetProperty("clock").GetProperty("lowFlow").GetString());
        Assert.Equal("against", Voice(json, "c037"));
        Assert.Equal("for", Voice(json, "c051"));
        Assert.DoesNotMatch(Words.Safe, text);
    }

    [Theory]
    [InlineData("20", "noObjection", "for")]
    [InlineData("20.1", "against", "against")]
    public void Both_sides_of_an_hour_of_low_flow(string toFlow, string refusal, string entry)
    {
        (_, string text, _) = InProcess.Run([.. Three, "--low-flow", "40", "--to-flow", toFlow, "--json"]);
        using JsonDocument json = JsonDocument.Parse(text);
        Assert.Equal((refusal, entry), (Voice(json, "c037"), Voice(json, "c021")));
    }

    [Fact]
    public void Times_and_minutes_give_the_same_result() => Assert.Equal(
        InProcess.Run([.. Three, "--no-flow", "4", "--low-flow", "26", "--json"]).Out,
        InProcess.Run([.. Three, "--collapse", "23:50", "--compressions", "23:54", "--now", "00:20", "--json"]).Out);

    [Fact]
    public void Criteria_do_not_change_how_it_ends_but_a_plan_that_is_not_possible_does()
    {
        Assert.Equal(ExitCode.Done, InProcess.Run("rapid", "--age", "85", "--sex", "male", "--weight", "80", "--low-flow", "120", "--answer", "orderAgainstResuscitation=yes").Code);
        Assert.Equal(ExitCode.StopFound, InProcess.Run([.. Three, "--vessel", "commonFemoralVein.right=occluded", "--vessel", "commonFemoralVein.left=occluded"]).Code);
    }

    [Theory]
    [InlineData("missingField", "--age", "rapid", "--sex", "male", "--weight", "85")]
    [InlineData("missingField", "--sex", "rapid", "--age", "54", "--weight", "85")]
    [InlineData("badOption", "--weight", "rapid", "--age", "54", "--sex", "male", "--weight", "heavy")]
    [InlineData("badOption", "--age", "rapid", "--age", "NaN", "--sex", "male", "--weight", "85")]
    [InlineData("notAChoice", "--situation", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--situation", "arrest")]
    [InlineData("notAChoice", "--answer", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--answer", "witnesed=yes")]
    [InlineData("contradiction", "--no-flow, --low-flow", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--low-flow", "3", "--now", "10:00")]
    [InlineData("missingField", "--now", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--collapse", "10:00")]
    [InlineData("badOption", "--now", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--now", "25:00")]
    [InlineData("contradiction", "compressions", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--compressions", "10:05", "--now", "10:00")]
    [InlineData("badOption", "--vessel", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--vessel", "commonFemoralVein")]
    [InlineData("notAChoice", "--vessel", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--vessel", "commonFemoralVein.middle=8")]
    [InlineData("badOption", "--vessel", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--vessel", "commonFemoralVein.left=800")]
    [InlineData("unreadableFile", "none.json", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--criteria", "none.json")]
    [InlineData("outOfRange", "--answer lactateMmolPerL", "rapid", "--age", "54", "--sex", "male", "--weight", "85", "--answer", "lactateMmolPerL=999")]
    public void What_cannot_be_used_is_named(string code, string field, params string[] args)
    {
        (ExitCode exit, string text, _) = InProcess.Run([.. args, "--json"]);
        Assert.Equal(ExitCode.InputError, exit);
        Assert.Equal((code, field), Faults.Of(text).Select(static f => (f.Code, f.Field)).Single());
    }

    [Fact]
    public void A_programme_hands_in_criteria_of_its_own()
    {
        string own = File.ReadAllText(Path.Combine(RepositoryFolder.Root, "catalogue", "rapid-criteria.json"));
        string looser = own.Replace("\"value\": 18, \"upper\": 75", "\"value\": 18, \"upper\": 80", StringComparison.Ordinal);
        Assert.NotEqual(own, looser);
        Assert.Equal(ExitCode.InputError, InProcess.Run([.. Three, "--criteria", work.Write("bare.json", looser)]).Code);
        string signed = looser.Replace("\"edition\"", "\"changedBy\": \"an invented programme\", \"changeReason\": \"test\", \"edition\"", StringComparison.Ordinal);
        (ExitCode code, string text, _) = InProcess.Run([.. Three, "--criteria", work.Write("own.json", signed)]);
        Assert.Equal(ExitCode.Done, code);
        Assert.Contains("criterion c001 is changed (changed by an invented programme: test)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_built_in_criteria_pass_their_schema() => Assert.True(JsonSchema.FromText(RapidCriteriaReader.Schema())
        .Evaluate(JsonDocument.Parse(File.ReadAllText(Path.Combine(RepositoryFolder.Root, "catalogue", "rapid-criteria.json"))).RootElement).IsValid);

    private static string? Voice(JsonDocument json, string id) => json.RootElement.GetProperty("criteria").EnumerateArray()
        .Single(c => c.GetProperty("id").GetString() == id).GetProperty("voice").GetString();
}
