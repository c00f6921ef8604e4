using Cavaxis.Planning.Rapid;

namespace Cavaxis.Planning.Tests.Rapid;

/// <summary>Both sides of every limit in the file, by definitions written here and not by the engine.</summary>
public class ThresholdTests
{
    private const double Step = 1e-6;

    /// <summary>Comparison, offsets from the lower and the upper limit at which it holds, and at which it does not.</summary>
    private static readonly Dictionary<AnswerComparison, (double[] Holds, double[] Not)> AtTheLimit = new()
    {
        [AnswerComparison.LessThan] = ([-Step, -1], [0, Step, 1]),
        [AnswerComparison.AtMost] = ([0, -Step, -1], [Step, 1]),
        [AnswerComparison.MoreThan] = ([Step, 1], [0, -Step, -1]),
        [AnswerComparison.AtLeast] = ([0, Step, 1], [-Step, -1]),
    };

    public static TheoryData<string> Numbers => [.. Minutes.Own.Criteria.Where(static c => c.When?.Value is not null).Select(static c => c.Id)];

    public static TheoryData<string> YesNo => [.. Minutes.Own.Criteria.Where(static c => c.When?.Comparison is AnswerComparison.Is or AnswerComparison.IsNot).Select(static c => c.Id)];

    public static TheoryData<string> Words => [.. Minutes.Own.Criteria.Where(static c => c.When?.Comparison is AnswerComparison.OneOf).Select(static c => c.Id)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_limit_holds_on_the_one_side_and_not_on_the_other(string id)
    {
        AnswerCondition when = When(id);
        double value = when.Value!.Value;
        if (when.Comparison == AnswerComparison.Between)
        {
            double upper = when.Upper!.Value;
            Assert.All([value, value + Step, upper - Step, upper], x => Assert.Equal(CriterionState.Met, At(when, x)));
            Assert.All([value - Step, value - 1, upper + Step, upper + 1], x => Assert.Equal(CriterionState.NotMet, At(when, x)));
            return;
        }

        (double[] holds, double[] not) = AtTheLimit[when.Comparison];
        Assert.All(holds, d => Assert.Equal(CriterionState.Met, At(when, value + d)));
        Assert.All(not, d => Assert.Equal(CriterionState.NotMet, At(when, value + d)));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_number_that_may_lie_on_both_sides_is_unknown(string id)
    {
        AnswerCondition when = When(id);
        Assert.Equal(CriterionState.Unknown, AnswerTest.Of(when, RapidAnswer.Of(when.Question, new NumberRange(when.Value!.Value - 1, when.Value.Value + 1))));
        Assert.Equal(CriterionState.Unknown, AnswerTest.Of(when, null));
    }

    [Theory]
    [MemberData(nameof(YesNo))]
    public void Yes_and_no_fall_on_two_sides_and_no_answer_on_neither(string id)
    {
        AnswerCondition when = When(id);
        bool wanted = when.Comparison == AnswerComparison.Is;
        Assert.Equal(CriterionState.Met, AnswerTest.Of(when, RapidAnswer.Of(when.Question, wanted)));
        Assert.Equal(CriterionState.NotMet, AnswerTest.Of(when, RapidAnswer.Of(when.Question, !wanted)));
        Assert.Equal(CriterionState.Unknown, AnswerTest.Of(when, null));
    }

    [Theory]
    [MemberData(nameof(Words))]
    public void Words_of_the_criterion_meet_it_and_the_others_do_not(string id)
    {
        AnswerCondition when = When(id);
        Assert.All(Minutes.Own.Questions.Single(q => q.Name == when.Question).Words, word => Assert.Equal(
            when.Words.Contains(word) ? CriterionState.Met : CriterionState.NotMet, AnswerTest.Of(when, RapidAnswer.Of(when.Question, word))));
        Assert.Equal(CriterionState.Unknown, AnswerTest.Of(when, null));
    }

    [Fact]
    public void There_are_limits_to_test() => Assert.True(
        Minutes.Own.Criteria.Count(static c => c.When?.Value is not null) > 50 && Minutes.Own.Criteria.Count(static c => c.When?.Comparison == AnswerComparison.Is) > 50 && Minutes.Own.Criteria.Count(static c => c.When?.Comparison == AnswerComparison.OneOf) > 3);

    private static AnswerCondition When(string id) => Minutes.Own.Criteria.Single(c => c.Id == id).When!;

    private static CriterionState At(AnswerCondition when, double x) => AnswerTest.Of(when, RapidAnswer.Of(when.Question, NumberRange.Exactly(x)));
}
