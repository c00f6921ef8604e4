using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>The runs of support that events tell of.</summary>
internal static class SupportFold
{
    /// <summary>Folds standing entries.</summary>
    /// <param name="ordered">Standing entries by when they happened.</param>
    /// <returns>Runs, oldest first. A start while one runs begins a new run; a change or an end without a start is of no run.</returns>
    public static IReadOnlyList<SupportRun> Of(IEnumerable<StandingEntry> ordered)
    {
        List<SupportRun> runs = [];
        foreach (StandingEntry entry in ordered)
        {
            switch (entry.Now.Event)
            {
                case SupportStarted started:
                    runs.Add(new SupportRun(Log(entry, started), [], null));
                    break;
                case SupportChanged changed when runs.Count > 0 && runs[^1].Ended is null:
                    runs[^1] = runs[^1] with { Changes = [.. runs[^1].Changes, Log(entry, changed)] };
                    break;
                case SupportEnded ended when runs.Count > 0 && runs[^1].Ended is null:
                    runs[^1] = runs[^1] with { Ended = Log(entry, ended) };
                    break;
                default:
                    break;
            }
        }

        return runs;
    }

    private static Logged<T> Log<T>(StandingEntry entry, T happened)
        where T : CourseEvent => new(entry.Sequence, entry.Now.OccurredAt, entry.Now.Who, happened);
}
