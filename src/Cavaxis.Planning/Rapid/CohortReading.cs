using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>One published row beside the patient. Rows overlap and are never multiplied.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Profile">Who was counted.</param>
/// <param name="Outcome">What was counted.</param>
/// <param name="Applies">Met where the patient has the profile, unknown where an answer is missing.</param>
/// <param name="If">What would have to be so, where that is unknown; else empty.</param>
/// <param name="Count">How many had the outcome; null where not printed.</param>
/// <param name="Of">Of how many; null where not printed.</param>
/// <param name="SharePercent">The share, percent.</param>
/// <param name="LowPercent">Lower end of the 95 percent interval; null where there is none.</param>
/// <param name="HighPercent">Upper end.</param>
/// <param name="Interval">Where the interval comes from, or why there is none.</param>
/// <param name="Small">True where the number is too small for a comparison.</param>
/// <param name="Source">Source and how far it was opened.</param>
/// <param name="Note">What else to know; may be empty.</param>
public sealed record CohortReading(
    string Id, string Profile, string Outcome, CriterionState Applies, string If, int? Count, int? Of, double SharePercent, double? LowPercent, double? HighPercent,
    string Interval, bool Small, Source Source, string Note);
