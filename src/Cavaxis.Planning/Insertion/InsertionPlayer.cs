using System.Collections.Immutable;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Mechanics.Insertion;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>Chooses which insertions are worth watching and lays them out in frames.</summary>
internal static class InsertionPlayer
{
    /// <summary>Besides the middle anatomy so many ways of going wrong are shown.</summary>
    private const int MostWrong = 3;

    /// <summary>Of the increments of the solver every second is shown.</summary>
    private const int Every = 2;

    /// <summary>The middle anatomy, and for each of the commonest ways of going wrong the first anatomy that goes so.</summary>
    /// <param name="task">What is inserted.</param>
    /// <param name="middle">The insertion into the middle anatomy.</param>
    /// <param name="patient">The sampled anatomies.</param>
    /// <param name="outcomes">What happened in each sampled one.</param>
    public static IReadOnlyList<InsertionPlay> Of(InsertionTask task, AnatomyInsertion middle, InsertionPatient patient, IReadOnlyList<AnatomyOutcome> outcomes)
    {
        var wrong = outcomes.Select(static (outcome, i) => (Outcome: outcome, Index: i))
            .Where(static o => o.Outcome is { IsRight: false, Fault.Length: 0 })
            .GroupBy(static o => (o.Outcome.WrongAt, Place(o.Outcome)))
            .OrderByDescending(static g => g.Count()).ThenBy(static g => g.Key)
            .Take(MostWrong);
        return
        [
            Play(task, 0, middle, null),
            .. wrong.Select(g => Play(task, g.First().Index + 1, patient.In(g.First().Index, task), WilsonShare.Of(g.Count(), outcomes.Count))),
        ];
    }

    /// <summary>The place that makes it wrong.</summary>
    private static string Place(AnatomyOutcome outcome) => outcome.WrongAt switch
    {
        InsertionPhase.WireFeed => outcome.AfterFeed.ToString(),
        InsertionPhase.CannulaAdvance => outcome.AfterAdvance.ToString(),
        _ => outcome.CannulaTip.ToString(),
    };

    private static InsertionPlay Play(InsertionTask task, int anatomy, AnatomyInsertion insertion, Estimate? share)
    {
        AnatomyOutcome outcome = insertion.Outcome;
        InsertionFrame[] frames = [.. insertion.Reports.SelectMany((report, part) => Frames(insertion.Lumen, report, PhaseOf(part)))];
        return new InsertionPlay(
            anatomy, outcome.AfterFeed, outcome.AfterAdvance, outcome.CannulaTip, outcome.WrongAt, WrongFrame(outcome, frames), share, insertion.Lumen, task.Cannula.OuterDiameterMm / 2, frames);
    }

    private static InsertionPhase PhaseOf(int part) => part switch
    {
        0 => InsertionPhase.WireFeed,
        1 => InsertionPhase.CannulaAdvance,
        _ => InsertionPhase.Removal,
    };

    private static IEnumerable<InsertionFrame> Frames(CavalLumen lumen, InsertionReport report, InsertionPhase phase)
    {
        InsertionMoment[] shown = [.. report.Moments.Where((m, i) => m.Assembly.Rod is not null && (i % Every == 0 || i == report.Moments.Length - 1))];
        foreach (InsertionMoment moment in shown)
        {
            InsertedAssembly assembly = moment.Assembly;

            // Node 0 stands before the skin.
            ImmutableArray<double> arcs = assembly.ArcsMm[1..];
            yield return new InsertionFrame(
                phase,
                assembly.Rod!.NodesMm[1..],
                arcs,
                Math.Min(moment.Depths.WireMm, arcs[^1]),
                Math.Min(moment.Depths.IntroducerMm, arcs[^1]),
                Math.Min(moment.Depths.CannulaMm, arcs[^1]),
                AnatomyInsertion.Inner(lumen, moment.TipMm),
                moment.TipForceN,
                moment.LargestContactN);
        }
    }

    /// <summary>The first frame of the last stay at the place where it goes wrong.</summary>
    private static int? WrongFrame(AnatomyOutcome outcome, InsertionFrame[] frames)
    {
        int last = Array.FindLastIndex(frames, f => f.Phase == outcome.WrongAt);
        if (outcome.WrongAt == InsertionPhase.None || last < 0)
        {
            return null;
        }

        int first = last;
        while (first > 0 && frames[first - 1].TipAt == frames[last].TipAt && frames[first - 1].Phase == outcome.WrongAt)
        {
            first--;
        }

        return first;
    }
}
