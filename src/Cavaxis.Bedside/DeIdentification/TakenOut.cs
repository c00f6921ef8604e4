namespace Cavaxis.Bedside.DeIdentification;

/// <summary>Something that was left out or made coarser.</summary>
/// <param name="Place">Where it stood.</param>
/// <param name="Why">Why; never what it was.</param>
public sealed record TakenOut(string Place, string Why);
