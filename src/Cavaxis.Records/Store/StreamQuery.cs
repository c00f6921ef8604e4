using Cavaxis.Records.Events;

namespace Cavaxis.Records.Store;

/// <summary>Which events of a stream are asked for.</summary>
/// <param name="Stream">Whose events.</param>
/// <param name="After">Only those with a greater number in the stream.</param>
/// <param name="Kind">Only this kind; null for all.</param>
/// <param name="OccurredFrom">Only those that happened then or later; null for no bound.</param>
/// <param name="OccurredBefore">Only those that happened earlier; null for no bound.</param>
public sealed record StreamQuery(
    StreamName Stream, long After = 0, EventKind? Kind = null, DateTimeOffset? OccurredFrom = null, DateTimeOffset? OccurredBefore = null);
