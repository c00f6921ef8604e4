using Cavaxis.Records.Events;

namespace Cavaxis.Records.Chain;

/// <summary>The end of a chain: how many events it has and the hash of the last.</summary>
/// <param name="Position">Place of the last event; 0 where there is none.</param>
/// <param name="Hash">Its hash.</param>
public sealed record ChainHead(long Position, EventHash Hash)
{
    /// <summary>The end of a chain without events.</summary>
    public static ChainHead Empty { get; } = new(0, EventHash.Genesis);
}
