namespace Cavaxis.Course.Outcomes;

/// <summary>Who was treated. Outcomes of two programmes or years cannot be compared without it.</summary>
/// <param name="Cases">How many.</param>
/// <param name="BySupport">How many of each kind of support, every kind named.</param>
/// <param name="YoungestYears">Age of the youngest; null without a case.</param>
/// <param name="MedianAgeYears">Median age; null without a case.</param>
/// <param name="OldestYears">Age of the oldest; null without a case.</param>
/// <param name="WithExpectedDeath">Of how many a risk was computed before support.</param>
/// <param name="MeanExpectedDeath">Mean of those risks; null without one.</param>
/// <param name="Words">The same in words.</param>
public sealed record CaseMix(
    int Cases,
    IReadOnlyDictionary<SupportKind, int> BySupport,
    double? YoungestYears,
    double? MedianAgeYears,
    double? OldestYears,
    int WithExpectedDeath,
    double? MeanExpectedDeath,
    string Words);
