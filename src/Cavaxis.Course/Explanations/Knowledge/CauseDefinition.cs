using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>A cause in words, where it can be, and how often it is thought to be before any sign.</summary>
/// <param name="Cause">Which.</param>
/// <param name="Words">Lower-case words within a sentence.</param>
/// <param name="Meaning">What happens, one sentence.</param>
/// <param name="PriorOdds">Relative frequency by kind of support; no entry where the cause cannot be.</param>
/// <param name="Source">Where the frequency comes from.</param>
public sealed record CauseDefinition(
    CauseOfChange Cause, string Words, string Meaning, ImmutableDictionary<SupportKind, double> PriorOdds, Source Source);
