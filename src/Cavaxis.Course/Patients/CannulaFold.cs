using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>The cannulae that events tell of, in the order in which they were placed.</summary>
internal static class CannulaFold
{
    /// <summary>Folds the standing entries about cannulae.</summary>
    /// <param name="ordered">Standing entries by when they happened.</param>
    /// <returns>Every cannula, those taken out too. A reading or move before its placement, or of a cannula that was never placed, is of no cannula.</returns>
    public static IReadOnlyList<LyingCannula> Of(IEnumerable<StandingEntry> ordered)
    {
        List<LyingCannula> all = [];
        foreach (StandingEntry entry in ordered)
        {
            CourseEntry now = entry.Now;
            switch (now.Event)
            {
                case CannulaPlaced placed:
                    all.Add(new LyingCannula(Log(entry, placed), placed.DepthCm, placed.DepthCm is null ? null : now.OccurredAt, placed.TurnDeg, [], [], null));
                    break;
                case PositionRead read when Find(all, read.Cannula) is int at and >= 0:
                    all[at] = At(all[at], read.DepthCm, read.TurnDeg, now.OccurredAt) with { Positions = [.. all[at].Positions, Log(entry, read)] };
                    break;
                case CannulaMoved moved when Find(all, moved.Cannula) is int at and >= 0:
                    all[at] = At(all[at], moved.DepthCm, moved.TurnDeg, now.OccurredAt) with { Moves = [.. all[at].Moves, Log(entry, moved)] };
                    break;
                case CannulaRemoved removed when Find(all, removed.Cannula) is int at and >= 0:
                    all[at] = all[at] with { Removed = Log(entry, removed) };
                    break;
                default:
                    break;
            }
        }

        return all;
    }

    private static LyingCannula At(LyingCannula cannula, double? depthCm, double? turnDeg, DateTimeOffset at) => cannula with
    {
        DepthCm = depthCm ?? cannula.DepthCm,
        DepthAt = depthCm is null ? cannula.DepthAt : at,
        TurnDeg = turnDeg ?? cannula.TurnDeg,
    };

    // The last of that name that still lies: a name may come again after removal.
    private static int Find(List<LyingCannula> all, string name) => all.FindLastIndex(c => c.IsIn && c.Name == name);

    private static Logged<T> Log<T>(StandingEntry entry, T happened)
        where T : CourseEvent => new(entry.Sequence, entry.Now.OccurredAt, entry.Now.Who, happened);
}
