using System.Collections.Immutable;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>Explanations of a trend.</summary>
/// <param name="Explanations">All causes that can be on this support, likeliest first; probabilities sum to one.</param>
/// <param name="Used">Signs that contributed.</param>
/// <param name="Missing">Signs that did not, because there is no value now.</param>
/// <param name="Unexplained">Sentences on readings that even the likeliest cause does not let expect.</param>
/// <param name="Next">The observation that would tell most; null when nothing is left to observe.</param>
/// <param name="Others">The two next best.</param>
/// <param name="EntropyBits">How undecided the causes are, bits; zero for one certain cause.</param>
/// <param name="Notes">What to keep in mind, in words.</param>
/// <param name="Version">Versions of the tables used.</param>
public sealed record ExplanationReport(
    ImmutableArray<Explanation> Explanations,
    ImmutableArray<ObservedQuantity> Used,
    ImmutableArray<MissingSign> Missing,
    ImmutableArray<string> Unexplained,
    NextObservation? Next,
    ImmutableArray<NextObservation> Others,
    double EntropyBits,
    ImmutableArray<string> Notes,
    string Version);
