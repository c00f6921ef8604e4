using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>Every answer that is known: typed, given by the situation, or following from age, size and clock.</summary>
internal sealed class AnswerSheet
{
    private readonly Dictionary<string, RapidAnswer> answers = new(StringComparer.Ordinal);

    /// <summary>Lays the answers together.</summary>
    /// <param name="criteria">The questions.</param>
    /// <param name="situations">Situations that hold.</param>
    /// <param name="input">What is known.</param>
    /// <param name="body">The size.</param>
    /// <exception cref="InputFaultException">Two answers contradict each other.</exception>
    public AnswerSheet(RapidCriteria criteria, IReadOnlyList<SituationRule> situations, RapidInput input, RapidBody body)
    {
        foreach (ImpliedAnswer implied in situations.SelectMany(static s => s.Implies))
        {
            Add(AnswerReader.Parse(criteria.Questions.First(q => q.Name == implied.Question), implied.Answer)!);
        }

        foreach (RapidAnswer answer in DerivedAnswers.Of(input, body).Concat(input.Answers))
        {
            Add(answer);
        }
    }

    /// <summary>The answer to a question; null where it is unknown.</summary>
    /// <param name="question">Name of the question.</param>
    /// <returns>The answer or null.</returns>
    public RapidAnswer? Of(string question) => answers.GetValueOrDefault(question);

    /// <summary>The answer in words.</summary>
    /// <param name="question">The question.</param>
    /// <returns>Such as "yes", "at least 40 min" or "unknown".</returns>
    public string Words(RapidQuestion question) => Of(question.Name) switch
    {
        { Yes: bool yes } => yes ? "yes" : "no",
        { Number: NumberRange number } => number.Words(question.Unit ?? string.Empty),
        { Word: string word } => Plans.PlainWords.FromName(char.ToUpperInvariant(word[0]) + word[1..]),
        _ => "unknown",
    };

    private void Add(RapidAnswer answer)
    {
        if (!answers.TryAdd(answer.Question, answer) && answers[answer.Question] != answer)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, answer.Question, "two answers", "one answer, the same as the situation, age, sex and clock give",
                "Take back the answer or the situation that does not hold."));
        }
    }
}
