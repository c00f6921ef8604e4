namespace Cavaxis.Imaging.Exercises;

/// <summary>How an answer was judged.</summary>
/// <param name="Points">0 to 100.</param>
/// <param name="Found">Whether the answer is right within the tolerance.</param>
/// <param name="DistanceMm">From the mark to the tip in the picture, mm; null where there is no mark or no tip in view.</param>
/// <param name="AlongMm">The part along the cannula, mm: positive beyond the tip, negative short of it.</param>
/// <param name="AcrossMm">The part across it, mm, without sign.</param>
/// <param name="ToleranceMm">What counts as found, mm.</param>
/// <param name="TakenFor">What was taken for the tip; null where the answer is right or nothing like it lies near.</param>
/// <param name="Explanation">Why, in plain words; at least one sentence.</param>
/// <param name="Truth">Where the tip is.</param>
public sealed record ExerciseScore(
    int Points, bool Found, double? DistanceMm, double? AlongMm, double? AcrossMm, double ToleranceMm, Lookalike? TakenFor, IReadOnlyList<string> Explanation, ExerciseTruth Truth);
