namespace Cavaxis.Records.Events;

/// <summary>An event with what stands of it after corrections.</summary>
/// <param name="Original">As first written down.</param>
/// <param name="Corrections">What put it right, oldest first; a correction of a correction counts here too.</param>
public sealed record StandingEvent(RecordedEvent Original, IReadOnlyList<RecordedEvent> Corrections)
{
    /// <summary>The event that holds now: the last correction, or the original where there is none.</summary>
    public RecordedEvent Now => Corrections.Count > 0 ? Corrections[^1] : Original;

    /// <summary>True where it was taken back as entered in error.</summary>
    public bool IsWithdrawn => Now.Kind == EventKind.Withdrawn;

    /// <summary>What stands of a stream.</summary>
    /// <param name="events">Events of one stream in their order, from the first.</param>
    /// <returns>Each original once, in the order in which they were written down; withdrawn ones stay, marked.</returns>
    public static IReadOnlyList<StandingEvent> Of(IEnumerable<RecordedEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        SortedDictionary<long, List<RecordedEvent>> byOriginal = [];
        Dictionary<long, long> originalOf = [];
        foreach (RecordedEvent one in events)
        {
            long original = one.Corrects is long corrected && originalOf.TryGetValue(corrected, out long first) ? first : one.Sequence;
            originalOf[one.Sequence] = original;
            if (!byOriginal.TryGetValue(original, out List<RecordedEvent>? all))
            {
                byOriginal[original] = all = [];
            }

            all.Add(one);
        }

        return [.. byOriginal.Values.Select(static all => new StandingEvent(all[0], all[1..]))];
    }
}
