using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>Share of anatomies in which the wire ends somewhere.</summary>
/// <param name="End">Where.</param>
/// <param name="Share">Before the cannula, 0 to 1; the interval comes from the number of anatomies alone.</param>
/// <param name="AfterCannula">After the cannula has come over it.</param>
public sealed record WireEndShare(WireEnd End, Estimate Share, Estimate AfterCannula);
