namespace Cavaxis.Mechanics.Relaxing;

/// <summary>Why a rod was not brought to rest, and how near it came.</summary>
/// <param name="Cause">Stable kind of fault.</param>
/// <param name="Words">For a person: what happened and with which numbers.</param>
/// <param name="ResidualN">Largest force left on a node, N.</param>
/// <param name="PenetrationMm">Largest penetration, mm.</param>
public sealed record RodFault(RodFaultCause Cause, string Words, double ResidualN, double PenetrationMm);
