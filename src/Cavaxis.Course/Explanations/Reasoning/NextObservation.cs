using System.Collections.Immutable;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>An observation not made yet, and what it would tell.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Words">Its words.</param>
/// <param name="Effort">What it takes.</param>
/// <param name="GainBits">Expected fall of the entropy of the causes, bits.</param>
/// <param name="Why">Why this one, in words.</param>
/// <param name="Answers">How it can turn out, from low to high.</param>
public sealed record NextObservation(
    ObservedQuantity Quantity, string Words, SignEffort Effort, double GainBits, string Why, ImmutableArray<ObservationAnswer> Answers);
