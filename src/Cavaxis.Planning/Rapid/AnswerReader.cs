using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>Reads answers as they are typed: <c>witnessed=yes</c>, <c>lactateMmolPerL=12</c>, <c>firstRhythm=shockable</c>.</summary>
public static class AnswerReader
{
    private const string YesWord = "yes";
    private const string NoWord = "no";

    /// <summary>Reads them.</summary>
    /// <param name="criteria">The questions.</param>
    /// <param name="typed">The answers, each NAME=ANSWER.</param>
    /// <param name="option">What to call the answers in faults.</param>
    /// <returns>The answers; unknown ones are left out.</returns>
    /// <exception cref="InputFaultException">Every answer that cannot be used.</exception>
    public static IReadOnlyList<RapidAnswer> Read(RapidCriteria criteria, IReadOnlyList<string> typed, string option = "--answer")
    {
        ArgumentNullException.ThrowIfNull(criteria);
        ArgumentNullException.ThrowIfNull(typed);
        List<InputFault> faults = [];
        List<RapidAnswer> answers = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (string text in typed)
        {
            string[] pair = text.Split('=', 2, StringSplitOptions.TrimEntries);
            RapidQuestion? question = criteria.Questions.FirstOrDefault(q => q.Name == pair[0]);
            if (question is null || DerivedAnswers.Names.Contains(question.Name, StringComparer.Ordinal))
            {
                string? closest = question is null ? ClosestWord.To(pair[0], criteria.Questions.Select(static q => q.Name)) : null;
                faults.Add(new InputFault(
                    FaultCode.NotAChoice, option, pair[0].Length == 0 ? "(nothing)" : InputFault.Shown(pair[0]), "the name of a question of the criteria",
                    question is not null ? "This is known from age, weight, height and the clock; give those." : closest is null ? "The result lists the questions with their names." : $"Did you mean \"{closest}\"?"));
            }
            else if (!seen.Add(question.Name))
            {
                faults.Add(new InputFault(FaultCode.DuplicateField, option, InputFault.Shown(question.Name), "each question once", "Drop one of the two."));
            }
            else if (pair.Length == 2 && pair[1] == JsonName.Unknown)
            {
                continue;
            }
            else if (pair.Length == 2 && Parse(question, pair[1]) is { } answer)
            {
                answers.Add(answer);
            }
            else
            {
                faults.Add(new InputFault(
                    question.Kind == QuestionKind.Number ? FaultCode.OutOfRange : FaultCode.NotAChoice, $"{option} {question.Name}", pair.Length < 2 || pair[1].Length == 0 ? "(nothing)" : InputFault.Shown(pair[1]),
                    Accepted(question), "Give such an answer, or leave it out where it is not known."));
            }
        }

        return faults.Count > 0 ? throw new InputFaultException(faults) : answers;
    }

    /// <summary>What a question takes, in words.</summary>
    /// <param name="question">The question.</param>
    /// <returns>Such as "a number from 0 to 50 mmol/L or unknown".</returns>
    internal static string Accepted(RapidQuestion question) => question.Kind switch
    {
        QuestionKind.Number => string.Create(CultureInfo.InvariantCulture, $"a number from {question.Low:0.##} to {question.High:0.##} {question.Unit} or unknown"),
        QuestionKind.Word => $"{string.Join(", ", question.Words)} or unknown",
        _ => "yes, no or unknown",
    };

    /// <summary>One answer; null where the question does not take it.</summary>
    internal static RapidAnswer? Parse(RapidQuestion question, string text) => question.Kind switch
    {
        QuestionKind.YesNo => text is YesWord or NoWord ? RapidAnswer.Of(question.Name, text == YesWord) : null,
        QuestionKind.Word => question.Words.Contains(text, StringComparer.Ordinal) ? RapidAnswer.Of(question.Name, text) : null,
        _ => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= question.Low && value <= question.High
            ? RapidAnswer.Of(question.Name, NumberRange.Exactly(value))
            : null,
    };
}
