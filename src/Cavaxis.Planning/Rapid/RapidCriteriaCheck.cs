using System.Globalization;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>What must hold between the parts of a file of criteria.</summary>
/// <param name="criteria">The file as bound.</param>
/// <param name="ledger">Takes the faults.</param>
internal sealed class RapidCriteriaCheck(RapidCriteria criteria, FaultLedger ledger)
{
    /// <summary>Printed shares are rounded to whole percent at the coarsest.</summary>
    private const double RoundingPercent = 0.55;

    private readonly HashSet<string> sources = [.. criteria.Sources.Select(static s => s.Id)];
    private readonly Dictionary<string, RapidQuestion> questions = criteria.Questions.GroupBy(static q => q.Name, StringComparer.Ordinal).ToDictionary(static g => g.Key, static g => g.First(), StringComparer.Ordinal);

    /// <summary>Checks everything.</summary>
    public void All()
    {
        Once("sources", criteria.Sources.Select(static s => s.Id));
        Once("questions", criteria.Questions.Select(static q => q.Name));
        Once("criteria", criteria.Criteria.Select(static c => c.Id));
        Once("cohorts", criteria.Cohorts.Select(static c => c.Id));
        Once("situations", criteria.Situations.Select(static s => JsonName.Of(s.Situation.ToString())));
        foreach (RapidSituation missing in Enum.GetValues<RapidSituation>().Where(s => criteria.Situations.All(rule => rule.Situation != s)))
        {
            Add(FaultCode.MissingField, "situations", JsonName.Of(missing.ToString()), "every situation once", "Add it; copy it from the built-in file.");
        }

        for (int i = 0; i < criteria.Sources.Count; i++)
        {
            if (string.IsNullOrWhiteSpace(criteria.Sources[i].Citation))
            {
                Add(FaultCode.WrongLength, At("sources", i, "citation"), "(nothing)", "author, year and place", "Name the source; a criterion without one cannot be judged.");
            }
        }

        for (int i = 0; i < criteria.Questions.Count; i++)
        {
            Question(criteria.Questions[i], At("questions", i));
        }

        for (int i = 0; i < criteria.Situations.Count; i++)
        {
            Situation(criteria.Situations[i], At("situations", i));
        }

        HashSet<string> earlier = new(StringComparer.Ordinal);
        for (int i = 0; i < criteria.Criteria.Count; i++)
        {
            Criterion(criteria.Criteria[i], At("criteria", i), earlier);
            earlier.Add(criteria.Criteria[i].Id);
        }

        for (int i = 0; i < criteria.Cohorts.Count; i++)
        {
            Cohort(criteria.Cohorts[i], At("cohorts", i));
        }

        HashSet<string> cohorts = [.. criteria.Cohorts.Select(static c => c.Id)];
        for (int i = 0; i < criteria.Conflicts.Count; i++)
        {
            foreach (string id in criteria.Conflicts[i].Cohorts.Where(id => !cohorts.Contains(id)))
            {
                NotFound(At("conflicts", i, "cohorts"), id, "the id of a cohort of this file");
            }
        }
    }

    private void Question(RapidQuestion question, string at)
    {
        bool number = question.Kind == QuestionKind.Number;
        if (number != (question is { Unit: not null, Low: not null, High: not null }) || (number && question.Low >= question.High))
        {
            Add(FaultCode.Contradiction, at, InputFault.Shown(question.Name), "unit, low and high, low below high, for a number and for nothing else", "Give all three or make it another kind.");
        }

        if ((question.Kind == QuestionKind.Word) != (question.Words.Count > 1))
        {
            Add(FaultCode.Contradiction, at, InputFault.Shown(question.Name), "two words or more for a word and for nothing else", "Give the words or make it another kind.");
        }
    }

    private void Situation(SituationRule rule, string at)
    {
        if ((rule.Goal is null) != (rule.Configurations.Count == 0))
        {
            Add(FaultCode.Contradiction, at, JsonName.Of(rule.Situation.ToString()), "a goal together with configurations, or neither", "Give both or leave out both.");
        }

        foreach (ImpliedAnswer implied in rule.Implies)
        {
            if (!questions.TryGetValue(implied.Question, out RapidQuestion? question))
            {
                NotFound($"{at}.implies", implied.Question, "the name of a question of this file");
            }
            else if (AnswerReader.Parse(question, implied.Answer) is null)
            {
                Add(FaultCode.NotAChoice, $"{at}.implies", InputFault.Shown(implied.Answer), AnswerReader.Accepted(question), "Give an answer that the question takes.");
            }
        }

        foreach (SituationFinding finding in rule.Findings)
        {
            SourceOf(finding.Source, $"{at}.findings");
        }
    }

    private void Criterion(SelectionCriterion criterion, string at, HashSet<string> earlier)
    {
        SourceOf(criterion.Source, at);
        if (criterion.Situations.Count == 0)
        {
            Add(FaultCode.WrongLength, $"{at}.situations", "(nothing)", "one situation at least", "Say where the criterion is asked.");
        }

        bool whole = criterion.Parts.Count > 0;
        if (whole == (criterion.When is not null) || whole != (criterion.Needed is not null) || criterion.Needed > criterion.Parts.Count)
        {
            Add(FaultCode.Contradiction, at, InputFault.Shown(criterion.Id), "either \"when\", or \"parts\" with \"needed\" no more than there are parts", "Keep one of the two.");
        }

        foreach (string part in criterion.Parts.Where(part => !earlier.Contains(part)))
        {
            NotFound($"{at}.parts", part, "the id of a criterion further up in this file");
        }

        if (criterion.When is { } when)
        {
            Condition(when, $"{at}.when");
        }
    }

    private void Condition(AnswerCondition when, string at)
    {
        if (!questions.TryGetValue(when.Question, out RapidQuestion? question))
        {
            NotFound($"{at}.question", when.Question, "the name of a question of this file");
            return;
        }

        bool suits = when.Comparison switch
        {
            AnswerComparison.Is or AnswerComparison.IsNot => question.Kind == QuestionKind.YesNo && when is { Value: null, Upper: null, Words.Count: 0 },
            AnswerComparison.OneOf => question.Kind == QuestionKind.Word && when is { Value: null, Upper: null, Words.Count: > 0 } && when.Words.All(word => question.Words.Contains(word, StringComparer.Ordinal)),
            AnswerComparison.Between => question.Kind == QuestionKind.Number && when is { Value: not null, Upper: not null, Words.Count: 0 } && when.Value < when.Upper,
            _ => question.Kind == QuestionKind.Number && when is { Value: not null, Upper: null, Words.Count: 0 },
        };
        if (!suits)
        {
            Add(
                FaultCode.Contradiction, at, JsonName.Of(when.Comparison.ToString()), $"a comparison and limits that suit {question.Name}, which takes {AnswerReader.Accepted(question)}",
                "Correct comparison, value, upper or words.");
        }
    }

    private void Cohort(PublishedCohort cohort, string at)
    {
        SourceOf(cohort.Source, at);
        if (cohort.When is { } when)
        {
            Condition(when, $"{at}.when");
        }

        if ((cohort.Count is null) == (cohort.SharePercent is null) || (cohort.Count is not null && (cohort.Of is null || cohort.Count > cohort.Of)))
        {
            Add(FaultCode.Contradiction, at, InputFault.Shown(cohort.Id), "count with of, or sharePercent, not both; count at most of", "Give the printed counts, or the share where they are not printed.");
        }

        double? share = cohort.SharePercent ?? (100.0 * cohort.Count / cohort.Of);
        if ((cohort.PrintedLowPercent is null) != (cohort.PrintedHighPercent is null)
            || cohort.PrintedLowPercent > share + RoundingPercent || cohort.PrintedHighPercent < share - RoundingPercent)
        {
            Add(FaultCode.Contradiction, at, InputFault.Shown(cohort.Id), "both ends of the printed interval with the share between them", "Correct the interval or leave it out.");
        }

        if (cohort.Count is not null && cohort.Certainty is not (Certainty.Seen or Certainty.SeenSecondHand))
        {
            Add(FaultCode.Contradiction, at, InputFault.Shown(cohort.Id), "counts only where they were read", "Give the share alone, or open the source.");
        }
    }

    private void SourceOf(string id, string at)
    {
        if (!sources.Contains(id))
        {
            NotFound($"{at}.source", id, "the id of a source of this file");
        }
    }

    private void Once(string list, IEnumerable<string> names)
    {
        foreach (IGrouping<string, string> twice in names.GroupBy(static n => n, StringComparer.Ordinal).Where(static g => g.Count() > 1))
        {
            Add(FaultCode.DuplicateField, list, InputFault.Shown(twice.Key), "every name once", "Give each its own name.");
        }
    }

    private void NotFound(string at, string id, string accepted) => Add(FaultCode.NotFound, at, InputFault.Shown(id), accepted, "Correct the name or add what it names.");

    private void Add(FaultCode code, string at, string value, string accepted, string remedy) => ledger.Add(code, at, value, accepted, remedy, ledger.PlaceOf(at));

    private static string At(string list, int index, string? field = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]{(field is null ? string.Empty : $".{field}")}");
}
