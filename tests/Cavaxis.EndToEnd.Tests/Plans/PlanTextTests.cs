using Cavaxis.Cli.Output;
using Cavaxis.EndToEnd.Tests.Programs;
using Cavaxis.Planning.Search;

namespace Cavaxis.EndToEnd.Tests.Plans;

public class PlanTextTests
{
    public static TheoryData<string> Demos => DemoCase.Names;

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_demo_case_is_planned_and_the_exit_code_says_whether_every_plan_is_stopped(string name)
    {
        Ended text = DemoCase.Plan(name);
        Assert.Contains("\nANSWER: ", text.Out, StringComparison.Ordinal);
        bool stopped = text.Out.Contains("every plan carries a HARD STOP", StringComparison.Ordinal)
            || text.Out.Contains("no plan can be made", StringComparison.Ordinal);
        Assert.Equal(stopped ? 1 : 0, text.ExitCode);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Every_line_fits_100_columns(string name) =>
        Assert.All(DemoCase.Plan(name).Lines, static line => Assert.True(line.Length <= CommandOutput.Width, line));

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_caution_and_the_mark_of_an_invented_case_come_before_the_answer(string name)
    {
        Ended text = DemoCase.Plan(name);
        string top = OneLine(text.Out.Split("ANSWER:")[0]);
        Assert.Contains(OneLine(Planner.Caution), top, StringComparison.Ordinal);
        Assert.Contains("[INVENTED CASE]", text.Lines[0], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Nothing_is_called_safe(string name)
    {
        Assert.DoesNotMatch(Words.Safe, DemoCase.Plan(name).Out);
        Assert.DoesNotMatch(Words.Safe, DemoCase.Plan(name, "--json").Out);
    }

    [Theory]
    [InlineData("A safe depth.")]
    [InlineData("placed SAFELY")]
    [InlineData("safer than the other")]
    public void The_search_for_that_word_finds_it(string text) => Assert.Matches(Words.Safe, text);

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_text_and_the_JSON_tell_the_same_first_plan(string name)
    {
        string first = PlanJson.Of(DemoCase.Plan(name, "--json")).Plans[0].Name;
        Assert.Contains(OneLine(first), OneLine(DemoCase.Plan(name).Out), StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_in_which_every_plan_is_stopped_ends_with_code_1()
    {
        using WorkFolder work = new();
        string path = work.Write("case.json", """
            {
              "cavaxisCase": 1, "title": "No way in", "invented": true,
              "patient": { "ageYears": 61, "sex": "male", "heightCm": 174, "weightKg": 82 },
              "support": { "goal": "gasExchange" },
              "vessels": [
                { "vessel": "internalJugularVein", "side": "right", "patency": "occluded" },
                { "vessel": "internalJugularVein", "side": "left", "patency": "occluded" },
                { "vessel": "commonFemoralVein", "side": "right", "patency": "occluded" },
                { "vessel": "commonFemoralVein", "side": "left", "patency": "occluded" }
              ]
            }
            """);
        Ended ended = CavaxisProcess.Run("plan", path, "--anatomies", "200");
        Assert.Equal((1, string.Empty), (ended.ExitCode, ended.Complaints));
        Assert.Contains("ANSWER: every plan carries a HARD STOP", ended.Out, StringComparison.Ordinal);
        Assert.Contains("  STOP ", ended.Out, StringComparison.Ordinal);
        Assert.All(ended.Lines, static line => Assert.True(line.Length <= CommandOutput.Width, line));
    }

    [Fact]
    public void Devices_that_make_no_plan_end_with_code_1_and_every_reason()
    {
        using WorkFolder work = new();
        string path = work.Write("case.json", """
            {
              "cavaxisCase": 1, "title": "One small cannula", "invented": true,
              "patient": { "ageYears": 61, "sex": "male", "heightCm": 174, "weightKg": 82 },
              "support": { "goal": "gasExchange" },
              "devicesOnHand": ["return-arterial-17fr-16cm"]
            }
            """);
        Ended text = CavaxisProcess.Run("plan", path, "--anatomies", "200");
        Assert.Equal((1, string.Empty), (text.ExitCode, text.Complaints));
        Assert.Contains("no plan can be made", text.Out, StringComparison.Ordinal);
        Assert.Contains("Not planned:", text.Out, StringComparison.Ordinal);
        Ended json = CavaxisProcess.Run("plan", path, "--anatomies", "200", "--json");
        Assert.Equal(1, json.ExitCode);
        Assert.Empty(PlanJson.Of(json).Plans);
        Assert.Equal(0, PlanJson.Of(json).Root.GetProperty("chosenPlan").GetInt32());
        Ended report = CavaxisProcess.Run("plan", path, "--anatomies", "200", "--report", work["none.html"]);
        Assert.Equal((1, string.Empty), (report.ExitCode, report.Complaints));
        Assert.True(new FileInfo(work["none.html"]).Length > 1000);
    }

    [Fact]
    public void Without_options_it_plans_over_10000_anatomies_with_seed_1()
    {
        Ended ended = CavaxisProcess.Run("plan", DemoCase.Small);
        Assert.Equal(0, ended.ExitCode);
        Assert.Contains("10000 sampled anatomies, seed 1,", ended.Out, StringComparison.Ordinal);
        Assert.Equal(ended.OutBytes, CavaxisProcess.Run("plan", DemoCase.Small, "--anatomies", "10000", "--seed", "1").OutBytes);
    }

    [Fact]
    public void A_case_that_is_not_invented_is_not_marked_as_one()
    {
        using WorkFolder work = new();
        string text = File.ReadAllText(DemoCase.Small).Replace("\"invented\": true", "\"invented\": false", StringComparison.Ordinal);
        Ended ended = CavaxisProcess.Run("plan", work.Write("case.json", text), "--anatomies", "200");
        Assert.DoesNotContain("INVENTED", ended.Out, StringComparison.Ordinal);
    }

    private static string OneLine(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
