using Cavaxis.Planning.Rapid;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Tests.Rapid;

public class PublishedCohortTests
{
    private static readonly RapidInput Old = new(80, Anatomy.Body.Sex.Male, 80);

    [Fact]
    public void Only_printed_counts_carry_an_interval_of_ours()
    {
        foreach (RapidSituation situation in Enum.GetValues<RapidSituation>())
        {
            Assert.All(Minutes.Cohorts(new RapidInput(40, Anatomy.Body.Sex.Female, 70) { Situations = [situation] }), static row =>
            {
                PublishedCohort data = Minutes.Own.Cohorts.Single(c => c.Id == row.Id);
                Assert.Equal(data.Count is not null, row.Interval.StartsWith("Wilson", StringComparison.Ordinal));
                Assert.Equal(row.LowPercent is null, row.Interval.StartsWith("none", StringComparison.Ordinal));
                Assert.True(row.LowPercent is null || (row.LowPercent <= row.SharePercent && row.SharePercent <= row.HighPercent));
                Assert.True(row.Source.Certainty is Certainty.Seen or Certainty.SeenSecondHand || data.Count is null);
            });
        }
    }

    [Fact]
    public void The_interval_of_51_of_122_is_the_one_its_source_prints()
    {
        CohortReading row = Minutes.Cohorts(Minutes.Man with { Situations = [RapidSituation.Hypothermia] }).Single(static c => c.Id == "s075");

        // Pasquier 2019 prints 42 % (33 to 51 %).
        Assert.Equal((42.0, 33.0, 51.0), (Math.Round(row.SharePercent), Math.Round(row.LowPercent!.Value), Math.Round(row.HighPercent!.Value)));
    }

    [Theory]
    [InlineData(2, 115, true)]
    [InlineData(6, 14, true)]
    [InlineData(5, 20, false)]
    [InlineData(4, 20, true)]
    [InlineData(16, 20, true)]
    [InlineData(15, 20, false)]
    [InlineData(10, 19, true)]
    public void Small_numbers_are_called_small(int count, int of, bool small) => Assert.Equal(small, CohortSelection.IsSmall(count, of));

    [Fact]
    public void Rows_of_another_age_are_not_shown_and_their_conflict_is_told_where_they_are()
    {
        Assert.Contains(Minutes.Cohorts(Old), static c => c is { Id: "s063", Applies: CriterionState.Met, Small: true });
        Assert.DoesNotContain(Minutes.Cohorts(Old), static c => c.Id is "s061" or "s062");
        Assert.Contains(Minutes.Of(Old).Conflicts, static says => says.Contains("2 of 115", StringComparison.Ordinal));
        Assert.DoesNotContain(Minutes.Of(Minutes.Man).Conflicts, static says => says.Contains("2 of 115", StringComparison.Ordinal));
    }

    [Fact]
    public void A_row_whose_profile_is_unknown_says_what_would_have_to_be_so()
    {
        CohortReading open = Minutes.Cohorts(Minutes.Man).Single(static c => c.Id == "s056");
        Assert.Equal(CriterionState.Unknown, open.Applies);
        Assert.Contains("sign of life", open.If, StringComparison.Ordinal);
        CohortReading met = Minutes.Cohorts(Minutes.Man with { Answers = Minutes.Answers("signsOfLife=yes") }).Single(static c => c.Id == "s056");
        Assert.Equal((CriterionState.Met, string.Empty), (met.Applies, met.If));
        Assert.DoesNotContain(Minutes.Cohorts(Minutes.Man with { Answers = Minutes.Answers("signsOfLife=no") }), static c => c.Id == "s056");
    }

    [Fact]
    public void A_child_is_not_shown_adults_and_an_adult_no_children()
    {
        HashSet<string> adults = [.. Minutes.Own.Cohorts.Where(static c => c.Ages == CohortAges.Adults).Select(static c => c.Id)];
        HashSet<string> children = [.. Minutes.Own.Cohorts.Where(static c => c.Ages == CohortAges.Children).Select(static c => c.Id)];
        IReadOnlyList<CohortReading> child = Minutes.Of(new RapidInput(17.9, Anatomy.Body.Sex.Male, 60) { Situations = [RapidSituation.ArrestInHospital] }).Cohorts;
        Assert.True(child.Count > 3);
        Assert.DoesNotContain(child, c => adults.Contains(c.Id));
        Assert.DoesNotContain(Minutes.Of(new RapidInput(18, Anatomy.Body.Sex.Male, 60) { Situations = [RapidSituation.ArrestInHospital] }).Cohorts, c => children.Contains(c.Id));
    }
}
