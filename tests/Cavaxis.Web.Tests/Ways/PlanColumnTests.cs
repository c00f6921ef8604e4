using System.Text.RegularExpressions;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Web.Pages.Ways;

namespace Cavaxis.Web.Tests.Ways;

public partial class PlanColumnTests
{
    public static TheoryData<int> Ranks => [.. PlannedCase.Result.Plans.Select(static p => p.Rank)];

    [Theory]
    [MemberData(nameof(Ranks))]
    public void Every_number_of_a_column_has_a_unit_or_says_of_what_and_where_it_comes_from(int rank)
    {
        PlanColumn column = new(PlannedCase.Result.Plans[rank - 1], RuleBookReader.BuiltIn);
        foreach ((string heading, _, Func<PlanColumn, string> text) in PlanColumn.Rows)
        {
            string said = text(column);
            Assert.False(string.IsNullOrWhiteSpace(said), heading);
            if (Digit().IsMatch(said))
            {
                Assert.Matches("L/min|mmHg|%|times|of 1", said);
                Assert.Matches("measured|calculated|estimated", said);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Ranks))]
    public void A_cannula_that_is_placed_along_the_axis_tells_its_depth_with_an_interval(int rank)
    {
        CannulationPlan plan = PlannedCase.Result.Plans[rank - 1];
        string[] said = [.. new PlanColumn(plan, RuleBookReader.BuiltIn).Cannulae];
        Assert.Equal(plan.Cannulae.Count, said.Length);
        Assert.All(plan.Cannulae.Zip(said), pair =>
        {
            Assert.Contains(" Fr ", pair.Second, StringComparison.Ordinal);
            Assert.Equal(pair.First.Fit is not null, Depth().IsMatch(pair.Second));
        });
    }

    [Theory]
    [InlineData(FindingGrade.Stop, 1, "1 stop")]
    [InlineData(FindingGrade.Warning, 0, "0 warnings")]
    [InlineData(FindingGrade.Caution, 3, "3 cautions")]
    public void Findings_are_counted_in_words(FindingGrade grade, int count, string words) => Assert.Equal(words, GradeWord.Counted(grade, count));

    [Fact]
    public void Grades_differ_in_word_and_shape_and_not_in_colour_alone()
    {
        GradeWord[] all = [.. Enum.GetValues<FindingGrade>().Select(GradeWord.Of)];
        Assert.Equal(all.Length, all.Select(static g => g.Shape).Distinct().Count());
        Assert.Equal(all.Length, all.Select(static g => g.Words).Distinct().Count());
    }

    [Fact]
    public void What_was_weighed_and_compared_belongs_to_its_patient()
    {
        WaysKept kept = new();
        kept.WeightsOf("a")[CriterionName.Fit] = 5;
        kept.ComparedOf("a").Add("plan");
        Assert.Equal(5, kept.WeightsOf("a")[CriterionName.Fit]);
        Assert.Empty(kept.WeightsOf("b"));
        Assert.Single(kept.ComparedOf("a"));
        Assert.Empty(kept.ComparedOf("b"));
    }

    [GeneratedRegex("[0-9]")]
    private static partial Regex Digit();

    [GeneratedRegex(@"to [0-9.]+ cm \([0-9.]+ to [0-9.]+\)$")]
    private static partial Regex Depth();
}
