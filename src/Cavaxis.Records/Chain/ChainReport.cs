namespace Cavaxis.Records.Chain;

/// <summary>What checking a whole store found.</summary>
/// <param name="Intact">End of the part that holds, from the first event.</param>
/// <param name="Break">The first break; null where the whole chain holds.</param>
/// <param name="Damage">What the store says of its own file, such as an index that does not match; empty where it says nothing.</param>
public sealed record ChainReport(ChainHead Intact, ChainBreak? Break, IReadOnlyList<string> Damage)
{
    /// <summary>True where every event holds and the store finds nothing wrong with itself.</summary>
    public bool IsWhole => Break is null && Damage.Count == 0;
}
