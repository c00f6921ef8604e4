using Cavaxis.Records.Chain;
using Cavaxis.Records.Events;

namespace Cavaxis.Records.Keeping;

/// <summary>What was recovered of a damaged file and what was not.</summary>
/// <param name="Kept">End of the chain in the new store: all events up to there are in it, as they were.</param>
/// <param name="Break">Where the damaged chain is first broken; null where every event was there.</param>
/// <param name="Loose">Events beyond the break that hold together in themselves. They are not in the new store, since nothing links them to it; a person decides what to enter again.</param>
/// <param name="Lost">Places known to have held an event that cannot be given.</param>
/// <param name="EndIsKnown">True where an anchor tells how many events there were; else events after the last that can be read may have been lost unseen.</param>
/// <param name="FirstPageMended">True where the file's first page was damaged and was put in from a new store.</param>
public sealed record RecoveryReport(
    ChainHead Kept, ChainBreak? Break, IReadOnlyList<RecordedEvent> Loose, IReadOnlyList<PositionRange> Lost, bool EndIsKnown, bool FirstPageMended);
