

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>Events as JSON.</summary>
/// <param name="Events">The events.</param>
/// <param name="Spoiled">Places in the store of events that do not hold and are not given.</param>
public sealed record EventList(IReadOnlyList<EventSheet> Events, IReadOnlyList<long> Spoiled);
