namespace Cavaxis.Records.Chain;

/// <summary>The first place at which a chain is broken.</summary>
/// <param name="Position">The place.</param>
/// <param name="Kind">How.</param>
/// <param name="Words">What was found, for a person.</param>
public sealed record ChainBreak(long Position, BreakKind Kind, string Words);
