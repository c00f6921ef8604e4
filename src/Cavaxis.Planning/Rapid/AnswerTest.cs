namespace Cavaxis.Planning.Rapid;

/// <summary>Holds an answer against a limit. Where the answer leaves both sides open, the result is unknown.</summary>
public static class AnswerTest
{
    /// <summary>Whether a condition holds.</summary>
    /// <param name="condition">The condition.</param>
    /// <param name="answer">The answer to its question; null where it is unknown.</param>
    /// <returns>Met, not met or unknown.</returns>
    public static CriterionState Of(AnswerCondition condition, RapidAnswer? answer)
    {
        ArgumentNullException.ThrowIfNull(condition);
        return condition.Comparison switch
        {
            AnswerComparison.Is => answer?.Yes is bool yes ? Told(yes) : CriterionState.Unknown,
            AnswerComparison.IsNot => answer?.Yes is bool yes ? Told(!yes) : CriterionState.Unknown,
            AnswerComparison.OneOf => answer?.Word is string word ? Told(condition.Words.Contains(word, StringComparer.Ordinal)) : CriterionState.Unknown,
            _ => answer?.Number is NumberRange number && condition.Value is double value ? Compared(condition.Comparison, number, value, condition.Upper ?? value) : CriterionState.Unknown,
        };
    }

    private static CriterionState Compared(AnswerComparison comparison, NumberRange number, double value, double upper) => comparison switch
    {
        AnswerComparison.LessThan => Ends(number.High < value, number.Low >= value),
        AnswerComparison.AtMost => Ends(number.High <= value, number.Low > value),
        AnswerComparison.MoreThan => Ends(number.Low > value, number.High <= value),
        AnswerComparison.AtLeast => Ends(number.Low >= value, number.High < value),
        AnswerComparison.Between => Ends(number.Low >= value && number.High <= upper, number.High < value || number.Low > upper),
        _ => throw new ArgumentOutOfRangeException(nameof(comparison), comparison, "Not a comparison of numbers."),
    };

    private static CriterionState Ends(bool everywhere, bool nowhere) => everywhere ? CriterionState.Met : nowhere ? CriterionState.NotMet : CriterionState.Unknown;

    private static CriterionState Told(bool holds) => holds ? CriterionState.Met : CriterionState.NotMet;
}
