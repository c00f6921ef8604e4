namespace Cavaxis.Planning.Rapid;

/// <summary>Judges every criterion by the answers.</summary>
internal sealed class CriteriaEvaluation
{
    private readonly Dictionary<string, SelectionCriterion> byId;
    private readonly RapidCriteria criteria;
    private readonly AnswerSheet sheet;
    private readonly SelectionCriterion[] asked;

    /// <summary>Takes the criteria of some situations.</summary>
    /// <param name="criteria">All criteria.</param>
    /// <param name="situations">Situations that hold.</param>
    /// <param name="sheet">The answers.</param>
    public CriteriaEvaluation(RapidCriteria criteria, IReadOnlyList<SituationRule> situations, AnswerSheet sheet)
    {
        (this.criteria, this.sheet) = (criteria, sheet);
        byId = criteria.Criteria.ToDictionary(static c => c.Id, StringComparer.Ordinal);
        asked = [.. criteria.Criteria.Where(c => c.Situations.Any(s => situations.Any(rule => rule.Situation == s)))];
    }

    /// <summary>What a kind of criterion says in a state.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="state">Its state.</param>
    /// <returns>Its voice.</returns>
    public static CriterionVoice Voice(SelectionKind kind, CriterionState state) => (kind, state) switch
    {
        (SelectionKind.Part or SelectionKind.Context, _) => CriterionVoice.Aside,
        (_, CriterionState.Unknown) => CriterionVoice.Open,
        (SelectionKind.Include, CriterionState.Met) => CriterionVoice.For,
        (SelectionKind.Include, _) => CriterionVoice.Against,
        (SelectionKind.Exclude, CriterionState.Met) => CriterionVoice.Against,
        (SelectionKind.Exclude, _) => CriterionVoice.NoObjection,
        (_, CriterionState.Met) => CriterionVoice.For,
        _ => CriterionVoice.NotYet,
    };

    /// <summary>Every criterion that is asked, in the order of the file.</summary>
    /// <returns>The readings.</returns>
    public IReadOnlyList<CriterionReading> Criteria() => [.. asked.Select(Reading)];

    /// <summary>Every question that criteria ask: those by which most sources refuse first, then those that most leave open.</summary>
    /// <param name="readings">The readings.</param>
    /// <returns>The questions.</returns>
    public IReadOnlyList<QuestionReading> Questions(IReadOnlyList<CriterionReading> readings)
    {
        ILookup<string, CriterionReading> speaking = asked.Zip(readings).Where(static pair => pair.Second.Voice != CriterionVoice.Aside).ToLookup(pair => Topic(pair.First), static pair => pair.Second);
        return [.. speaking.Select(topic => Question(topic.Key, [.. topic]))
            .OrderByDescending(static q => q.RefusedBy + q.NotTakenBy).ThenByDescending(static q => q.OpenIn).ThenBy(static q => q.Name, StringComparer.Ordinal)];
    }

    /// <summary>Every source that has criteria here.</summary>
    /// <param name="readings">The readings.</param>
    /// <returns>The sources, those that say most first.</returns>
    public static IReadOnlyList<SourceReading> Sources(IReadOnlyList<CriterionReading> readings) =>
    [
        .. readings.Where(static r => r.Voice != CriterionVoice.Aside).GroupBy(static r => r.SourceId, StringComparer.Ordinal).Select(static source => new SourceReading(
            source.Key, source.First().Source.Citation, source.Count(static r => r.Voice == CriterionVoice.For), source.Count(static r => r.Voice == CriterionVoice.Against),
            source.Count(static r => r.Voice == CriterionVoice.NoObjection), source.Count(static r => r.Voice == CriterionVoice.NotYet), source.Count(static r => r.Voice == CriterionVoice.Open),
            [.. source.Where(static r => r.Voice == CriterionVoice.Against).Select(static r => r.Wording)]))
            .OrderByDescending(static s => s.Against).ThenByDescending(static s => s.For + s.Open).ThenBy(static s => s.Id, StringComparer.Ordinal),
    ];

    /// <summary>Questions that stand only in parts of a criterion and leave it open.</summary>
    /// <returns>Names of the questions.</returns>
    public IReadOnlyList<string> OpenParts() =>
        [.. asked.Where(c => c.Kind != SelectionKind.Part && c.Parts.Count > 0 && StateOf(c) == CriterionState.Unknown).SelectMany(Leaves).Where(c => StateOf(c) == CriterionState.Unknown).Select(static c => c.When!.Question).Distinct(StringComparer.Ordinal)];

    private IEnumerable<SelectionCriterion> Leaves(SelectionCriterion criterion) =>
        criterion.Parts.Count == 0 ? [criterion] : criterion.Parts.SelectMany(part => Leaves(byId[part]));

    private static string Topic(SelectionCriterion criterion) => criterion.When?.Question ?? criterion.Id;

    private QuestionReading Question(string topic, CriterionReading[] readings)
    {
        RapidQuestion? question = criteria.Questions.FirstOrDefault(q => q.Name == topic);
        int SourcesOf(Func<CriterionReading, bool> speaks) => readings.Where(speaks).Select(static r => r.SourceId).Distinct(StringComparer.Ordinal).Count();
        return new QuestionReading(
            topic, question?.Asks ?? readings[0].Wording, question is null ? "told by its parts" : sheet.Words(question), question is null ? "its parts" : AnswerReader.Accepted(question),
            SourcesOf(static r => r.Voice == CriterionVoice.For),
            SourcesOf(static r => r is { Voice: CriterionVoice.Against, Kind: SelectionKind.Exclude }),
            SourcesOf(static r => r is { Voice: CriterionVoice.Against, Kind: SelectionKind.Include }),
            SourcesOf(static r => r.Voice == CriterionVoice.NotYet),
            SourcesOf(static r => r.Voice == CriterionVoice.Open),
            SourcesOf(static _ => true),
            readings.Where(static r => r.Voice == CriterionVoice.Against).All(static r => r.Source.Certainty == Quantities.Certainty.FromMemory));
    }

    private CriterionReading Reading(SelectionCriterion criterion)
    {
        CriterionState state = StateOf(criterion);
        return new CriterionReading(
            criterion.Id, criterion.Kind, criterion.Wording, state, Voice(criterion.Kind, state), criterion.Strength, MinutesLeft(criterion), criterion.Source,
            criteria.SourceOf(criterion.Source, criterion.Certainty), criterion.Note ?? string.Empty);
    }

    private CriterionState StateOf(SelectionCriterion criterion)
    {
        if (criterion.When is { } when)
        {
            return AnswerTest.Of(when, sheet.Of(when.Question));
        }

        int met = 0;
        int unknown = 0;
        foreach (string part in criterion.Parts)
        {
            CriterionState state = StateOf(byId[part]);
            met += state == CriterionState.Met ? 1 : 0;
            unknown += state == CriterionState.Unknown ? 1 : 0;
        }

        return met >= criterion.Needed ? CriterionState.Met : met + unknown < criterion.Needed ? CriterionState.NotMet : CriterionState.Unknown;
    }

    /// <summary>Minutes until a limit on low flow is reached; null where the criterion sets none or the clock does not run.</summary>
    private double? MinutesLeft(SelectionCriterion criterion) =>
        criterion is { Kind: SelectionKind.Include or SelectionKind.Exclude, When: { Question: DerivedAnswers.LowFlow, Value: double limit } } && sheet.Of(DerivedAnswers.Compressions)?.Number is NumberRange so
            ? Math.Max(0, limit - so.Low)
            : null;
}
