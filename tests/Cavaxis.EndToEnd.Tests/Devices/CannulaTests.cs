using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.Cli.Output;
using Cavaxis.EndToEnd.Tests.Plans;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Devices;

public class CannulaTests
{
    private const string Bench = """
        # id: own-return-17fr
        # description: Arterial return cannula, label data, bench with water
        # family: arterialReturn
        # outer diameter [Fr]: 17
        # insertable length [cm]: 18
        # inner diameter [mm]: 4.9
        # temperature [degC]: 20
        # hole [mm]: return side holes | 12 | 10 | 4 | 1.5 | allRound
        # hole [mm]: return end | 0 | 0 | 1 | 4.7 | end
        flow [L/min],pressure drop [mmHg]
        1,7.4
        2,27.1
        3,57.5
        4,98
        5,149
        """;

    private static readonly Lazy<string[]> Identifiers = new(static () =>
    {
        using JsonDocument list = JsonDocument.Parse(CavaxisProcess.Run("cannula", "list", "--json").Out);
        return [.. list.RootElement.EnumerateArray().Select(static row => row.GetProperty("id").GetString()!)];
    });

    [Fact]
    public void The_list_names_every_cannula_once_and_fits_100_columns()
    {
        Ended text = CavaxisProcess.Run("cannula", "list");
        Assert.Equal(0, text.ExitCode);
        Assert.NotEmpty(Identifiers.Value);
        Assert.Equal(Identifiers.Value.Length, Identifiers.Value.Distinct().Count());
        Assert.All(Identifiers.Value, id => Assert.Contains($" {id} ", text.Out, StringComparison.Ordinal));
        Assert.All(text.Lines, static line => Assert.True(line.Length <= CommandOutput.Width, line));
    }

    [Fact]
    public void Every_cannula_can_be_shown_in_100_columns_and_its_pressure_rises_with_flow() => Assert.All(Identifiers.Value, static id =>
    {
        (ExitCode code, string text, _) = InProcess.Run("cannula", "show", id);
        Assert.Equal(ExitCode.Done, code);
        Assert.All(text.Split('\n'), static line => Assert.True(line.Length <= CommandOutput.Width, line));
        using JsonDocument sheet = JsonDocument.Parse(InProcess.Run("cannula", "show", id, "--json").Out);
        foreach (JsonElement lumen in sheet.RootElement.GetProperty("lumens").EnumerateArray())
        {
            JsonElement[] points = [.. lumen.GetProperty("points").EnumerateArray()];
            double[] drops = [.. points.Select(static p => p.GetProperty("pressureDropMmHg").GetProperty("value").GetDouble())];
            Assert.Equal(drops.Order(), drops);
            Assert.All(points, static p => Assert.Equal(1, p.GetProperty("holeShares").EnumerateArray().Sum(static s => s.GetDouble()), 9));
        }
    });

    [Fact]
    public void A_cannula_that_is_not_in_the_catalogue_is_not_found()
    {
        var fault = Faults.Only(CavaxisProcess.Run("cannula", "show", "own-return-17fr", "--json"));
        Assert.Equal(("notFound", "own-return-17fr"), (fault.Code, fault.Value));
    }

    [Fact]
    public void A_bench_curve_becomes_a_cannula_that_is_listed_shown_and_planned_with()
    {
        using WorkFolder work = new();
        string own = work["own.json"];
        Ended import = CavaxisProcess.Run("cannula", "import", work.Write("bench.csv", Bench), "--save", own);
        Assert.Equal((0, string.Empty), (import.ExitCode, import.Complaints));
        Assert.Contains("own-return-17fr", import.Out, StringComparison.Ordinal);
        Assert.All(import.Lines, line => Assert.True(line.Length <= CommandOutput.Width || line.Contains(own, StringComparison.Ordinal), line));
        Assert.Contains(" own-return-17fr ", CavaxisProcess.Run("cannula", "list", "--catalogue", own).Out, StringComparison.Ordinal);

        string owned = File.ReadAllText(DemoCase.PathOf("nearly-everything-unknown.json")).TrimEnd()[..^1]
            + """, "devicesOnHand": ["own-return-17fr", "drain-multi-25fr-55cm", "distal-7fr"] }""";
        owned = owned.Replace("distal-7fr", Identifiers.Value.First(static id => id.StartsWith("distal", StringComparison.Ordinal)), StringComparison.Ordinal);
        string path = work.Write("case.json", owned);
        Ended plan = CavaxisProcess.Run("plan", path, "--json", "--anatomies", "500", "--catalogue", own);
        Assert.InRange(plan.ExitCode, 0, 1);
        IReadOnlyList<PlanJson.Plan> plans = PlanJson.Of(plan).Plans;
        Assert.NotEmpty(plans);
        Assert.Contains(plans, static p => p.Devices.Contains("own-return-17fr"));

        var fault = Faults.Only(CavaxisProcess.Run("plan", path, "--json", "--anatomies", "500"));
        Assert.Contains("own-return-17fr", fault.Value + fault.Field + fault.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_import_is_added_and_the_same_one_again_replaces_itself()
    {
        using WorkFolder work = new();
        string own = work["own.json"];
        string first = work.Write("first.csv", Bench);
        string second = work.Write("second.csv", Bench.Replace("17fr", "17fr-b", StringComparison.Ordinal));
        Assert.Equal(ExitCode.Done, InProcess.Run("cannula", "import", first, "--save", own).Code);
        Assert.Equal(ExitCode.Done, InProcess.Run("cannula", "import", second, "--save", own).Code);
        byte[] before = File.ReadAllBytes(own);
        Assert.Equal(ExitCode.Done, InProcess.Run("cannula", "import", first, "--save", own).Code);
        Assert.Equal(before, File.ReadAllBytes(own));
        string list = InProcess.Run("cannula", "list", "--catalogue", own).Out;
        Assert.Contains(" own-return-17fr ", list, StringComparison.Ordinal);
        Assert.Contains(" own-return-17fr-b ", list, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1,7.4", "1,much")]
    [InlineData("1,7.4", "1,NaN")]
    [InlineData("1,7.4", "1,-7.4")]
    [InlineData("flow [L/min]", "flow")]
    [InlineData("flow [L/min]", "flow [furlong]")]
    [InlineData("# family: arterialReturn", "# family: teapot")]
    [InlineData("# outer diameter [Fr]: 17", "# outer diameter [Fr]: 0")]
    [InlineData("# inner diameter [mm]: 4.9", "# inner diameter [mm]: 49")]
    [InlineData("# id: own-return-17fr", "# id: ")]
    [InlineData("2,27.1", "2,27.1,9")]
    public void A_broken_bench_file_is_refused_and_nothing_is_saved(string from, string to)
    {
        Assert.Contains(from, Bench, StringComparison.Ordinal);
        using WorkFolder work = new();
        string csv = work.Write("bench.csv", Bench.Replace(from, to, StringComparison.Ordinal));
        (ExitCode code, string json, string err) = InProcess.Run("cannula", "import", csv, "--save", work["own.json"], "--json");
        Assert.Equal((ExitCode.InputError, string.Empty), (code, err));
        Assert.NotEmpty(Faults.Of(json));
        Assert.False(File.Exists(work["own.json"]));
    }

    [Fact]
    public void A_broken_bench_file_is_refused_by_the_real_program_in_words()
    {
        using WorkFolder work = new();
        Ended ended = CavaxisProcess.Run("cannula", "import", work.Write("bench.csv", "flow,drop\n1,2\n"));
        Assert.Equal((2, string.Empty), (ended.ExitCode, ended.Out));
        Assert.StartsWith("The input cannot be used", ended.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ended.Err, StringComparison.Ordinal);
    }
}
