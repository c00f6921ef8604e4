using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>An entry with what stands of it after corrections. What was said before stays visible.</summary>
/// <param name="Original">As first written down.</param>
/// <param name="Corrections">What put it right, oldest first; a correction of a correction counts here too.</param>
public sealed record StandingEntry(CourseEntry Original, IReadOnlyList<CourseEntry> Corrections)
{
    /// <summary>Number by which other entries refer to it: that of the original.</summary>
    public long Sequence => Original.Sequence;

    /// <summary>The entry that holds now: the last correction, or the original where there is none.</summary>
    public CourseEntry Now => Corrections.Count > 0 ? Corrections[^1] : Original;

    /// <summary>True where it was taken back as entered in error.</summary>
    public bool IsWithdrawn => Now.Event is EntryWithdrawn;

    /// <summary>True where it was put right at least once.</summary>
    public bool IsCorrected => Corrections.Count > 0;

    /// <summary>What stands of entries.</summary>
    /// <param name="entries">Entries of one patient, in any order; a number that comes twice counts once.</param>
    /// <returns>Each original once, in the order of their numbers; withdrawn ones stay, marked.</returns>
    internal static IReadOnlyList<StandingEntry> Of(IEnumerable<CourseEntry> entries)
    {
        SortedDictionary<long, CourseEntry> bySequence = [];
        foreach (CourseEntry one in entries)
        {
            bySequence.TryAdd(one.Sequence, one);
        }

        Dictionary<long, long> originalOf = [];
        SortedDictionary<long, List<CourseEntry>> byOriginal = [];
        foreach (CourseEntry one in bySequence.Values)
        {
            long original = one.Corrects is long corrected && originalOf.TryGetValue(corrected, out long first) ? first : one.Sequence;
            originalOf[one.Sequence] = original;
            if (!byOriginal.TryGetValue(original, out List<CourseEntry>? all))
            {
                byOriginal[original] = all = [];
            }

            all.Add(one);
        }

        return [.. byOriginal.Values.Select(static all => new StandingEntry(all[0], all[1..]))];
    }
}
