namespace Cavaxis.Course.Outcomes;

/// <summary>One point of a cumulative-sum chart.</summary>
/// <param name="Index">Which case, from 1.</param>
/// <param name="Case">The case.</param>
/// <param name="Weight">Its weight.</param>
/// <param name="Score">Sum after the case, never below 0.</param>
/// <param name="Signalled">True when the sum reached the limit here; the next case starts from 0.</param>
/// <param name="ObservedMinusExpected">Events so far less the events expected so far.</param>
public sealed record CusumPoint(int Index, CusumCase Case, double Weight, double Score, bool Signalled, double ObservedMinusExpected);
