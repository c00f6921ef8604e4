using Cavaxis.Anatomy.Lumens;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Insertion;

/// <summary>Counts outcomes.</summary>
internal static class InsertionSummary
{
    /// <summary>The summary of one cannula.</summary>
    /// <param name="task">What was inserted.</param>
    /// <param name="placed">The cannula of the plan.</param>
    /// <param name="middle">The middle anatomy.</param>
    /// <param name="inMiddle">What happened in it.</param>
    /// <param name="outcomes">What happened in each anatomy.</param>
    /// <param name="advice">What was tried.</param>
    public static CannulaInsertion Of(
        InsertionTask task, PlacedCannula placed, LumenShape middle, AnatomyOutcome inMiddle, IReadOnlyList<AnatomyOutcome> outcomes, IReadOnlyList<InsertionAdvice> advice)
    {
        AnatomyOutcome[] followed = [.. outcomes.Where(static o => o.Fault.Length == 0)];
        int all = outcomes.Count;
        CavalLumen lumen = new(middle, task.Cannula.OuterDiameterMm / 2);
        return new CannulaInsertion
        {
            Role = placed.Role,
            DeviceId = placed.DeviceId,
            Route = placed.Route,
            Side = placed.Side,
            DepthCm = task.DepthMm / 10,
            WireCm = task.WireMm(lumen.Axis) / 10,
            Right = WilsonShare.Of(followed.Count(static o => o.IsRight), Math.Max(1, followed.Length)),
            WireEnds =
            [
                .. Enum.GetValues<WireEnd>()
                    .Select(end => new WireEndShare(
                        end, WilsonShare.Of(outcomes.Count(o => o.AfterFeed == end), all), WilsonShare.Of(outcomes.Count(o => o.AfterAdvance == end), all)))
                    .Where(static share => share.Share.Value > 0 || share.AfterCannula.Value > 0)
                    .OrderByDescending(static share => share.Share.Value),
            ],
            FirstWrong =
            [
                .. Enum.GetValues<InsertionPhase>()
                    .Select(phase => new PhaseShare(phase, WilsonShare.Of(followed.Count(o => o.WrongAt == phase), Math.Max(1, followed.Length)))),
            ],
            CannulaTips = followed.GroupBy(static o => o.CannulaTip).OrderByDescending(static g => g.Count()).ToDictionary(static g => g.Key, g => g.Count() / (double)followed.Length),
            WireTipForceN = Spread(outcomes, static o => o.TipForceN),
            WireTipForceAt = outcomes.GroupBy(static o => o.TipForceAt).OrderByDescending(static g => g.Count()).ThenBy(static g => g.Key).First().Key,
            CannulaForceN = Spread(outcomes, static o => o.CannulaForceN),
            WireLostMm = Spread(outcomes, static o => o.WireLostMm),
            Advice = advice,
            NotFollowed = outcomes.Where(static o => o.Fault.Length > 0).GroupBy(static o => o.Fault).OrderBy(static g => g.Key, StringComparer.Ordinal).ToDictionary(static g => g.Key, static g => g.Count()),
            DeepestPenetrationMm = outcomes.Max(static o => o.PenetrationMm),
            Paths = new InsertionPaths(
                lumen,
                inMiddle.WirePath,
                inMiddle.FinalPath,
                [.. outcomes.Select(static o => (IReadOnlyList<Anatomy.Space.Vector3D>)o.WirePath)],
                [.. outcomes.Select(static o => o.AfterFeed)],
                AnatomyInsertion.Wanted(task.FromNeck),
                task.Cannula.OuterDiameterMm / 2),
        };
    }

    /// <summary>Share of the anatomies in which every cannula goes as it should, of those in which all could be followed to the end.</summary>
    /// <param name="outcomes">For each cannula, what happened in each anatomy.</param>
    /// <returns>Share with its interval; null where no cannula was studied.</returns>
    public static Estimate? EveryRight(IReadOnlyList<AnatomyOutcome[]> outcomes)
    {
        if (outcomes.Count == 0)
        {
            return null;
        }

        int[] followed = [.. Enumerable.Range(0, outcomes[0].Length).Where(i => outcomes.All(o => o[i].Fault.Length == 0))];
        return WilsonShare.Of(followed.Count(i => outcomes.All(o => o[i].IsRight)), Math.Max(1, followed.Length));
    }

    private static Estimate Spread(IReadOnlyList<AnatomyOutcome> outcomes, Func<AnatomyOutcome, double> of) =>
        Estimate.FromSamples([.. outcomes.Select(of)], Origin.Calculated);
}
