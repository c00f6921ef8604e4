using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>Something done otherwise, tried in the same anatomies with the same unknowns.</summary>
/// <param name="Words">What.</param>
/// <param name="Anatomies">In how many.</param>
/// <param name="RightBefore">Share that went right as planned in these, 0 to 1.</param>
/// <param name="RightAfter">Share that goes right with the change.</param>
/// <param name="Gain">Difference of the two, paired; positive is better.</param>
public sealed record InsertionAdvice(string Words, int Anatomies, double RightBefore, double RightAfter, Estimate Gain);
