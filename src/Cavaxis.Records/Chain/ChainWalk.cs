using System.Globalization;

namespace Cavaxis.Records.Chain;

/// <summary>Goes along a chain from its start, event by event, and says where it is first broken. Knows no store.</summary>
internal sealed class ChainWalk
{
    private readonly Dictionary<string, long> versions = new(StringComparer.Ordinal);
    private readonly EventNames names = new();
    private readonly ChainAnchor? anchor;

    /// <summary>Starts before the first event.</summary>
    /// <param name="anchor">A line kept elsewhere that the chain must pass; null for none.</param>
    public ChainWalk(ChainAnchor? anchor = null) => this.anchor = anchor;

    /// <summary>The last event that holds.</summary>
    public ChainHead Head { get; private set; } = ChainHead.Empty;

    /// <summary>The first break; null as long as all holds.</summary>
    public ChainBreak? Break { get; private set; }

    /// <summary>Takes the next event.</summary>
    /// <param name="row">The event that lies next in order of position.</param>
    /// <returns>True where the chain still holds.</returns>
    public bool Take(EventRow row)
    {
        long expected = Head.Position + 1;
        Break ??= Judge(row, expected);
        if (Break is not null)
        {
            return false;
        }

        versions[row.Stream] = row.Sequence;
        Head = row.Head;
        return true;
    }

    /// <summary>Notes that the store cannot give the next event.</summary>
    public void CannotRead() => Break ??= new ChainBreak(
        Head.Position + 1, BreakKind.Unreadable, Words($"event {Head.Position + 1} cannot be read"));

    /// <summary>Notes that there are no more events.</summary>
    public void End()
    {
        if (Break is null && anchor is not null && anchor.Head.Position > Head.Position)
        {
            Break = new ChainBreak(Head.Position + 1, BreakKind.CutOff, Words($"the chain ends at {Head.Position}; the anchor names event {anchor.Head.Position}"));
        }
    }

    private ChainBreak? Judge(EventRow row, long expected)
    {
        if (row.Position != expected)
        {
            return row.Position > expected
                ? new ChainBreak(expected, BreakKind.Missing, Words($"event {expected} is missing; the next that is there is {row.Position}"))
                : new ChainBreak(row.Position, BreakKind.Unlinked, Words($"event {row.Position} lies where none may lie"));
        }

        if (!row.HoldsTogether || !row.IsWellFormed(names))
        {
            return new ChainBreak(expected, BreakKind.Altered, Words($"the contents of event {expected} are not those that were hashed"));
        }

        if (!row.PreviousHash.AsSpan().SequenceEqual(Head.Hash.Bytes))
        {
            return new ChainBreak(expected, BreakKind.Unlinked, Words($"event {expected} does not follow from event {Head.Position}: inserted, exchanged or moved"));
        }

        long next = versions.GetValueOrDefault(row.Stream) + 1;
        if (row.Sequence != next || row.Corrects < 1 || row.Corrects >= next)
        {
            return new ChainBreak(expected, BreakKind.OutOfSequence, Words($"event {expected} has number {row.Sequence} in its stream; {next} is next"));
        }

        return anchor is not null && anchor.Head.Position == expected && anchor.Head != row.Head
            ? new ChainBreak(expected, BreakKind.NotTheAnchored, Words($"event {expected} is not the one that the anchor names: the chain was written anew"))
            : null;
    }

    private static string Words(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
