using Cavaxis.Records.Chain;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>The end of the chain, as JSON.</summary>
/// <param name="Anchor">The line to keep elsewhere.</param>
/// <param name="Events">Number of events up to it.</param>
public sealed record RecordAnchor(string Anchor, long Events)
{
    /// <summary>Of an anchor.</summary>
    /// <param name="anchor">The anchor.</param>
    /// <returns>The same for JSON.</returns>
    public static RecordAnchor Of(ChainAnchor anchor)
    {
        ArgumentNullException.ThrowIfNull(anchor);
        return new RecordAnchor(anchor.Line, anchor.Head.Position);
    }
}
