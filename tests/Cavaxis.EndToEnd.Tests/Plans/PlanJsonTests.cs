using System.Text.Json;
using Cavaxis.EndToEnd.Tests.Programs;
using Json.Schema;

namespace Cavaxis.EndToEnd.Tests.Plans;

public class PlanJsonTests
{
    public static TheoryData<string> Demos => DemoCase.Names;

    private static readonly JsonSchema PlanSchema = JsonSchema.FromText(CavaxisProcess.Run("schema", "plan").Out);
    private static readonly JsonSchema CaseSchema = JsonSchema.FromText(CavaxisProcess.Run("schema", "case").Out);

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_answer_passes_the_schema_that_the_program_prints(string name)
    {
        Ended answer = DemoCase.Plan(name, "--json");
        Assert.InRange(answer.ExitCode, 0, 1);
        using JsonDocument json = JsonDocument.Parse(answer.Out);
        Assert.True(PlanSchema.Evaluate(json.RootElement).IsValid, name);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_case_passes_the_schema_that_the_program_prints(string name)
    {
        using JsonDocument json = JsonDocument.Parse(File.ReadAllText(DemoCase.PathOf(name)));
        Assert.True(CaseSchema.Evaluate(json.RootElement).IsValid, name);
    }

    [Theory]
    [InlineData("\"cavaxisPlan\"", "\"cavaxisPlans\"")]
    [InlineData("\"seed\": 1,", "\"seed\": \"1\",")]
    [InlineData("\"calculated\"", "\"certain\"")]
    public void The_schema_refuses_an_answer_of_another_form(string from, string to)
    {
        string answer = DemoCase.Plan("nearly-everything-unknown.json", "--json").Out;
        Assert.Contains(from, answer, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(answer.Replace(from, to, StringComparison.Ordinal));
        Assert.False(PlanSchema.Evaluate(json.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Plans_are_ranked_from_1_and_stopped_ones_come_last(string name)
    {
        JsonElement[] plans = [.. PlanJson.Of(DemoCase.Plan(name, "--json")).Root.GetProperty("plans").EnumerateArray()];
        Assert.Equal(Enumerable.Range(1, plans.Length), plans.Select(static p => p.GetProperty("rank").GetInt32()));
        bool[] stopped = [.. plans.Select(static p => p.GetProperty("findings").EnumerateArray().Any(static f => f.GetProperty("grade").GetString() == "stop"))];
        Assert.Equal(stopped.Order(), stopped);
        Assert.All([true, false], group =>
        {
            double[] scores = [.. plans.Where((_, i) => stopped[i] == group).Select(static p => p.GetProperty("score").GetDouble())];
            Assert.Equal(scores.OrderDescending(), scores);
        });
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_same_seed_gives_the_same_bytes_and_another_seed_others(string name)
    {
        byte[] first = DemoCase.Plan(name, "--json").OutBytes;
        Assert.Equal(first, CavaxisProcess.Run("plan", DemoCase.PathOf(name), "--json", "--anatomies", "1000").OutBytes);
        Assert.NotEqual(first, CavaxisProcess.Run("plan", DemoCase.PathOf(name), "--json", "--anatomies", "1000", "--seed", "2").OutBytes);
    }

    [Theory]
    [InlineData("de_DE.UTF-8")]
    [InlineData("tr_TR.UTF-8")]
    [InlineData("de_DE.ISO-8859-1")]
    [InlineData("C")]
    public void The_locale_of_the_machine_changes_no_byte(string locale)
    {
        Dictionary<string, string> environment = new() { ["LANG"] = locale, ["LC_ALL"] = locale, ["TZ"] = "Pacific/Kiritimati", ["COLUMNS"] = "40" };
        string name = Path.GetFileName(DemoCase.Small);
        Assert.Equal(
            DemoCase.Plan(name).OutBytes,
            CavaxisProcess.Run(["plan", DemoCase.Small, "--anatomies", "1000"], environment).OutBytes);
        Assert.Equal(
            DemoCase.Plan(name, "--json").OutBytes,
            CavaxisProcess.Run(["plan", DemoCase.Small, "--json", "--anatomies", "1000"], environment).OutBytes);
    }

    [Fact]
    public void Cores_change_no_byte() => Assert.Equal(
        DemoCase.Plan(Path.GetFileName(DemoCase.Small), "--json").OutBytes,
        CavaxisProcess.Run(
            ["plan", DemoCase.Small, "--json", "--anatomies", "1000"],
            new Dictionary<string, string> { ["DOTNET_PROCESSOR_COUNT"] = "1" }).OutBytes);
}
