using System.Collections.Immutable;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>One way in which an observation can turn out.</summary>
/// <param name="Words">What would be read, with numbers.</param>
/// <param name="Probability">How likely that is, 0 to 1.</param>
/// <param name="Odds">The causes after it, likeliest first.</param>
public sealed record ObservationAnswer(string Words, double Probability, ImmutableArray<CauseOdds> Odds);
