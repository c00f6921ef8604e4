using Cavaxis.Quantities;

namespace Cavaxis.Course.Criteria;

/// <summary>A reading held against a criterion.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Verdict">What the best value of the reading says.</param>
/// <param name="Observed">The reading; null when nothing was measured.</param>
/// <param name="WithinError">True when the 90 % interval of the reading lies on both sides of the threshold: the verdict could turn at the next reading.</param>
/// <param name="Words">One sentence for a person.</param>
public sealed record CriterionJudgement(Criterion Criterion, CriterionVerdict Verdict, Estimate? Observed, bool WithinError, string Words);
