using Cavaxis.Records.Events;

namespace Cavaxis.Records.Store;

/// <summary>Which events of a stream are asked for.</summary>
/// <param name="Stream">Whose events.</param>
/// <param name="After">Only those with a greater number in the stream.</param>
/// <param name="Kind">Only this kind; null for all.</param>
/// <param name="OccurredFrom">Only those that happened then or later; null for no bound.</param>
/// <param name="OccurredBefore">Only those that happened earlier; null for no bound.</param>
/// <param name="Without">All but events of this kind that correct none: of a kind that comes by the thousand, those that put others right come all the same. Null to leave out none.</param>
/// <param name="LastHappened">Only so many, those that happened last; null for all.</param>
/// <param name="LastWritten">Only so many, those written down last; null for all.</param>
public sealed record StreamQuery(
    StreamName Stream, long After = 0, EventKind? Kind = null, DateTimeOffset? OccurredFrom = null, DateTimeOffset? OccurredBefore = null,
    EventKind? Without = null, int? LastHappened = null, int? LastWritten = null);
