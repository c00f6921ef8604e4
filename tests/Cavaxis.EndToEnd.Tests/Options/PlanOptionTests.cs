using System.Text.Json;
using System.Text.Json.Nodes;
using Cavaxis.EndToEnd.Tests.Plans;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.EndToEnd.Tests.Options;

public class PlanOptionTests
{
    private static readonly string RuleBook = Path.Combine(RepositoryFolder.Root, "catalogue", "rulebook.json");

    [Theory]
    [InlineData("--anatomies", "199", "200", "200000")]
    [InlineData("--anatomies", "200001", "200", "200000")]
    [InlineData("--anatomies", "1e3", "200", "200000")]
    [InlineData("--anatomies", "99999999999999999999999", "200", "200000")]
    [InlineData("--seed", "1.5", "0", "9007199254740992")]
    [InlineData("--seed", "9007199254740993", "0", "9007199254740992")]
    [InlineData("--seed", "one", "0", "9007199254740992")]
    [InlineData("--plan", "0", "1", "100")]
    [InlineData("--plan", "first", "1", "100")]
    [InlineData("--weights fit", "fit=-1", "0", "100")]
    [InlineData("--weights fit", "fit=101", "0", "100")]
    [InlineData("--weights fit", "fit=NaN", "0", "100")]
    [InlineData("--weights fit", "fit", "0", "100")]
    [InlineData("--weights", "beauty", "fit", "surgicalAccess")]
    [InlineData("--report", "plan.docx", ".html", ".pdf")]
    [InlineData("--report", "plan", ".html", ".pdf")]
    public void A_bad_option_is_refused_with_its_name_its_value_and_the_range(string field, string value, string low, string high)
    {
        string option = field.Split(' ')[0];
        (Cavaxis.Cli.ExitCode code, string json, string err) = InProcess.Run("plan", DemoCase.Small, "--json", option, value);
        Assert.Equal((Cavaxis.Cli.ExitCode.InputError, string.Empty), (code, err));
        var fault = Assert.Single(Faults.Of(json));
        Assert.Equal((field, value), (fault.Field, fault.Value));
        Assert.Contains(low, fault.Accepted, StringComparison.Ordinal);
        Assert.Contains(high, fault.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_bad_option_is_named_at_once_by_the_real_program_in_words()
    {
        Ended ended = CavaxisProcess.Run("plan", DemoCase.Small, "--anatomies", "5", "--seed", "x", "--weights", "fit=-1,nice=2,fit=1,fit=2");
        Assert.Equal((2, string.Empty), (ended.ExitCode, ended.Out));
        Assert.All(["--anatomies is 5", "--seed is x", "--weights fit is fit=-1", "--weights is nice", "each criterion once"], part =>
            Assert.Contains(part, ended.Err, StringComparison.Ordinal));
    }

    [Fact]
    public void A_rank_beyond_the_last_plan_is_refused_with_the_number_of_plans()
    {
        int plans = PlanJson.Of(DemoCase.Plan(Path.GetFileName(DemoCase.Small), "--json")).Plans.Count;
        var fault = Faults.Only(CavaxisProcess.Run("plan", DemoCase.Small, "--json", "--anatomies", "1000", "--plan", "99"));
        Assert.Equal(("badOption", "--plan", "99"), (fault.Code, fault.Field, fault.Value));
        Assert.Contains($"from 1 to {plans}", fault.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan", "CASE", "--seeed", "3")]
    [InlineData("plan", "CASE", "--anatomies")]
    [InlineData("plan", "CASE", "more")]
    [InlineData("plan", "CASE", "-x")]
    [InlineData("plan")]
    [InlineData("replan", "CASE")]
    [InlineData("cannula", "break")]
    [InlineData("schema", "moon")]
    [InlineData("validate", "--room", "Moon")]
    public void A_misspelt_command_is_refused_and_not_guessed(params string[] args)
    {
        (Cavaxis.Cli.ExitCode code, string json, _) = InProcess.Run([.. args.Select(static a => a == "CASE" ? DemoCase.Small : a), "--json"]);
        Assert.Equal(Cavaxis.Cli.ExitCode.InputError, code);
        Assert.NotEmpty(Faults.Of(json));
    }

    [Fact]
    public void A_misspelt_verb_is_refused_by_the_real_program_in_words()
    {
        Ended ended = CavaxisProcess.Run("nonsense");
        Assert.Equal((2, string.Empty), (ended.ExitCode, ended.Out));
        Assert.Contains("nonsense", ended.Err, StringComparison.Ordinal);
        Assert.Contains("--help", ended.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan", "cannula", "validate", "schema")]
    [InlineData("list", "show", "import", "cannula")]
    public void Without_a_verb_the_verbs_are_listed_and_that_is_no_failure(string first, string second, string third, string last)
    {
        Ended ended = last == "cannula" ? CavaxisProcess.Run(last) : CavaxisProcess.Run();
        Assert.Equal((0, string.Empty), (ended.ExitCode, ended.Complaints));
        Assert.All([first, second, third, last], verb => Assert.Contains(verb, ended.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void Weights_change_the_ranking_and_nothing_else_of_a_plan()
    {
        const string Case = "tall-man-severe-lung-failure.json";
        const string OnlyAccess = "fit=0,flowReached=0,vesselRatio=0,inletMargin=0,returnMargin=0,oxygenDelivery=0,saturation=0,recirculationBound=0,leftVentricularLoad=0,limbThreat=0,circulatorySupport=0,groinsUsed=0,surgicalAccess=0,punctures=10";
        PlanJson usual = PlanJson.Of(DemoCase.Plan(Case, "--json"));
        PlanJson weighted = PlanJson.Of(DemoCase.Plan(Case, "--json", "--weights", OnlyAccess));
        Assert.NotEqual(usual.Plans.Select(static p => p.Name), weighted.Plans.Select(static p => p.Name));
        Assert.NotEqual(DemoCase.Plan(Case).Out, DemoCase.Plan(Case, "--weights", OnlyAccess).Out);
        JsonElement[] criteria = [.. weighted.Root.GetProperty("plans")[0].GetProperty("criteria").EnumerateArray()];
        Assert.Equal("punctures", Assert.Single(criteria, static c => c.GetProperty("weight").GetDouble() > 0).GetProperty("name").GetString());

        // Fewest vessels first, by the number of cannulae alone, among the plans that carry no stop.
        int[] vessels = [.. weighted.Root.GetProperty("plans").EnumerateArray()
            .Where(static p => p.GetProperty("findings").EnumerateArray().All(static f => f.GetProperty("grade").GetString() != "stop"))
            .Select(static p => p.GetProperty("cannulae").GetArrayLength())];
        Assert.Equal(vessels.Order(), vessels);
    }

    [Fact]
    public void The_built_in_rule_book_as_a_file_gives_the_same_bytes() => Assert.Equal(
        DemoCase.Plan("child-lung-failure.json", "--json").OutBytes,
        CavaxisProcess.Run("plan", DemoCase.Small, "--json", "--anatomies", "1000", "--rules", RuleBook).OutBytes);

    [Fact]
    public void A_looser_rule_book_needs_who_and_why_and_is_then_named_on_the_plan()
    {
        using WorkFolder work = new();
        JsonObject book = JsonNode.Parse(File.ReadAllText(RuleBook))!.AsObject();
        book["limits"]![0]!["value"] = -150;
        string anonymous = work.Write("anonymous.json", book.ToJsonString());
        var fault = Faults.Only(CavaxisProcess.Run("plan", DemoCase.Small, "--json", "--rules", anonymous));
        Assert.Equal(("missingField", "changedBy, changeReason"), (fault.Code, fault.Field));

        book["changedBy"] = "Programme board";
        book["changeReason"] = "Trial of deeper suction";
        string signed = work.Write("signed.json", book.ToJsonString());
        Ended text = CavaxisProcess.Run("plan", DemoCase.Small, "--anatomies", "200", "--rules", signed);
        Assert.Equal(0, text.ExitCode);
        Assert.Contains(
            "(changed by Programme board: Trial of deeper suction)",
            string.Join(' ', text.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stricter_rule_book_needs_no_reason_and_lowers_the_flow()
    {
        using WorkFolder work = new();
        JsonObject book = JsonNode.Parse(File.ReadAllText(RuleBook))!.AsObject();
        book["limits"]![0]!["value"] = -50;
        Ended strict = CavaxisProcess.Run("plan", DemoCase.Small, "--json", "--anatomies", "1000", "--rules", work.Write("strict.json", book.ToJsonString()));
        Assert.InRange(strict.ExitCode, 0, 1);
        Assert.Empty(PlanJson.Of(strict).Root.GetProperty("loosenedRules").EnumerateArray());
        Assert.True(MostFlow(strict) < MostFlow(DemoCase.Plan("child-lung-failure.json", "--json")));
    }

    [Theory]
    [InlineData("--rules", "{}")]
    [InlineData("--rules", "not JSON")]
    [InlineData("--catalogue", "{}")]
    [InlineData("--catalogue", "[1")]
    public void A_broken_file_of_rules_or_devices_is_refused(string option, string text)
    {
        using WorkFolder work = new();
        (Cavaxis.Cli.ExitCode code, string json, _) = InProcess.Run("plan", DemoCase.Small, "--json", option, work.Write("own.json", text));
        Assert.Equal(Cavaxis.Cli.ExitCode.InputError, code);
        Assert.NotEmpty(Faults.Of(json));
    }

    private static double MostFlow(Ended ended) => PlanJson.Of(ended).Root.GetProperty("plans").EnumerateArray()
        .Max(static p => p.GetProperty("circuit").GetProperty("flowLPerMin").GetDouble());
}
