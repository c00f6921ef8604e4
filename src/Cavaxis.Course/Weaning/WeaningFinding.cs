using Cavaxis.Course.Criteria;

namespace Cavaxis.Course.Weaning;

/// <summary>A criterion of weaning as judged.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="StartMinute">Start of the step that was read, min; null when no step could be.</param>
/// <param name="Judgement">What the reading says.</param>
public sealed record WeaningFinding(WeaningCriterion Criterion, double? StartMinute, CriterionJudgement Judgement);
