using System.Globalization;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Plans;

public class HostileCultureTests
{
    [Theory]
    [InlineData("plan", "CASE", "--anatomies", "200", "--json")]
    [InlineData("plan", "CASE", "--anatomies", "200", "--json", "--weights", "fit=2.5")]
    [InlineData("plan", "CASE", "--anatomies", "1.5")]
    [InlineData("cannula", "list")]
    [InlineData("cannula", "show", "bicaval-19fr-21cm")]
    [InlineData("validate", "--room", "Blood")]
    [InlineData("schema", "case")]
    public void A_culture_with_other_decimals_and_signs_changes_no_character(params string[] command)
    {
        string[] args = [.. command.Select(static a => a == "CASE" ? DemoCase.PathOf("tall-man-severe-lung-failure.json") : a)];
        (ExitCode, string, string) plain = InProcess.Run(args);
        (ExitCode, string, string) hostile = Hostile(() => InProcess.Run(args));
        Assert.Equal(plain.Item2.Split('\n'), hostile.Item2.Split('\n'));
        Assert.Equal((plain.Item1, Complaints(plain.Item3)), (hostile.Item1, Complaints(hostile.Item3)));
    }

    [Fact]
    public void A_report_is_the_same_under_that_culture()
    {
        using WorkFolder work = new();
        string[] Args(string file) => ["plan", DemoCase.Small, "--anatomies", "200", "--report", work[file]];
        InProcess.Run(Args("plain.html"));
        Hostile(() => InProcess.Run(Args("hostile.html")));
        Assert.Equal(File.ReadAllBytes(work["plain.html"]), File.ReadAllBytes(work["hostile.html"]));
    }

    [Fact]
    public void The_culture_is_hostile() => Assert.Equal("~1;5", Hostile(static () => (-1.5).ToString(CultureInfo.CurrentCulture)));

    private static string Complaints(string err) => new Ended(0, [], err, 0).Complaints;

    private static T Hostile<T>(Func<T> work)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo hostile = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        hostile.NumberFormat.NumberDecimalSeparator = ";";
        hostile.NumberFormat.NumberGroupSeparator = ".";
        hostile.NumberFormat.NegativeSign = "~";
        hostile.NumberFormat.NaNSymbol = "?";
        CultureInfo.CurrentCulture = hostile;
        try
        {
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
