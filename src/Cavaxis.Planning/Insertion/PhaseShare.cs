using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>Share of anatomies in which a part of the insertion is the first to go wrong.</summary>
/// <param name="Phase">The part; none where all went as it should.</param>
/// <param name="Share">0 to 1; the interval comes from the number of anatomies alone.</param>
public sealed record PhaseShare(InsertionPhase Phase, Estimate Share);
