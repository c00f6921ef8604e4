using Cavaxis.Course.Criteria;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Tests.Criteria;

public class CriterionTests
{
    private static readonly Source Somewhere = new("somewhere 2001", Certainty.Seen);

    [Theory]
    [InlineData(CriterionComparison.AtLeast, 9.99, CriterionVerdict.NotMet)]
    [InlineData(CriterionComparison.AtLeast, 10, CriterionVerdict.Met)]
    [InlineData(CriterionComparison.Above, 10, CriterionVerdict.NotMet)]
    [InlineData(CriterionComparison.Above, 10.01, CriterionVerdict.Met)]
    [InlineData(CriterionComparison.AtMost, 10, CriterionVerdict.Met)]
    [InlineData(CriterionComparison.AtMost, 10.01, CriterionVerdict.NotMet)]
    [InlineData(CriterionComparison.Below, 10, CriterionVerdict.NotMet)]
    [InlineData(CriterionComparison.Below, 9.99, CriterionVerdict.Met)]
    public void A_reading_meets_it_on_one_side_of_the_threshold(CriterionComparison comparison, double value, CriterionVerdict verdict) =>
        Assert.Equal(verdict, Ten(comparison).Judge(Read(value, 0)).Verdict);

    [Fact]
    public void What_was_not_measured_is_not_met()
    {
        CriterionJudgement judged = Ten(CriterionComparison.AtLeast).Judge(null);
        Assert.Equal(CriterionVerdict.NotMeasured, judged.Verdict);
        Assert.Contains("not measured", judged.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_verdict_within_the_error_is_called_so()
    {
        Assert.True(Ten(CriterionComparison.AtLeast).Judge(Read(10.5, 1)).WithinError);
        Assert.False(Ten(CriterionComparison.AtLeast).Judge(Read(13, 1)).WithinError);
        Assert.Contains("within its error", Ten(CriterionComparison.Below).Judge(Read(9.5, 1)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Sources_that_disagree_are_both_told_where_it_matters()
    {
        Criterion six = new("s", "velocity", CriterionComparison.AtLeast, 6, "cm/s", Somewhere, other: new OtherThreshold(10, new("elsewhere 2022", Certainty.Seen)));
        Assert.Contains("the other way round at 10 cm/s (elsewhere 2022)", six.Judge(Read(8, 0.5)).Words, StringComparison.Ordinal);
        Assert.DoesNotContain("elsewhere", six.Judge(Read(11, 0.5)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_criterion_without_name_or_threshold_is_refused()
    {
        Assert.Throws<InputFaultException>(static () => new Criterion(" ", "x", CriterionComparison.Above, 1, "1", Somewhere));
        Assert.Throws<InputFaultException>(static () => new Criterion("x", "x", CriterionComparison.Above, double.NaN, "1", Somewhere));
    }

    private static Criterion Ten(CriterionComparison comparison) => new("k", "flow integral", comparison, 10, "cm", Somewhere);

    private static Estimate Read(double value, double sd) => Estimate.Normal(value, sd, Origin.Measured);
}
