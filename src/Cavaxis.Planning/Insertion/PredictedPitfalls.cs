using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Steps;

namespace Cavaxis.Planning.Insertion;

/// <summary>Writes into the step list what the insertion study expects to go wrong, at the step where it does.</summary>
internal static class PredictedPitfalls
{
    /// <summary>Less than this share is not told at a step.</summary>
    private const double Told = 0.02;

    /// <summary>The steps with their predicted pitfalls.</summary>
    /// <param name="steps">The step list.</param>
    /// <param name="studied">The cannulae that were studied.</param>
    public static IReadOnlyList<ProcedureStep> On(IReadOnlyList<ProcedureStep> steps, IReadOnlyList<CannulaInsertion> studied) =>
        [.. steps.Select(step => step with { PredictedPitfall = studied.FirstOrDefault(c => c.Role == step.Cannula) is { } cannula ? Words(step.Phase, cannula) : null })];

    /// <summary>The part of a cannula's insertion that most often goes wrong first, in words; empty where none is worth telling.</summary>
    /// <param name="cannula">The cannula.</param>
    public static string Worst(CannulaInsertion cannula) => cannula.FirstWrong.Where(static f => f.Phase != InsertionPhase.None).MaxBy(static f => f.Share.Value) is { } worst
        && Words(worst.Phase, cannula) is string words
        ? $"{PlainWords.Vessel(cannula.Route, cannula.Side)}, {PlainWords.FromName(worst.Phase.ToString())}: {char.ToLowerInvariant(words[0])}{words[1..]}"
        : string.Empty;

    private static string? Words(InsertionPhase phase, CannulaInsertion cannula)
    {
        double share = cannula.FirstWrong.FirstOrDefault(f => f.Phase == phase)?.Share.Value ?? 0;
        if (phase == InsertionPhase.None || share < Told)
        {
            return null;
        }

        string where = phase switch
        {
            InsertionPhase.WireFeed => Ends(cannula, static e => e.Share.Value),
            InsertionPhase.CannulaAdvance => Ends(cannula, static e => e.AfterCannula.Value),
            _ => string.Join(", ", cannula.CannulaTips.Take(3).Select(static t => FormattableString.Invariant($"{PlainWords.FromName(t.Key.ToString())} {100 * t.Value:F0} %"))),
        };
        string lost = phase == InsertionPhase.CannulaAdvance
            ? FormattableString.Invariant($" The wire is drawn back by {cannula.WireLostMm.Value:F0} mm ({cannula.WireLostMm.Low:F0} to {cannula.WireLostMm.High:F0}).")
            : string.Empty;
        return FormattableString.Invariant($"Goes wrong here first in {100 * share:F0} % of sampled anatomies (calculated): {where}.{lost}");
    }

    private static string Ends(CannulaInsertion cannula, Func<WireEndShare, double> of) => "wire ends in " + string.Join(", ", cannula.WireEnds
        .OrderByDescending(of).Where(e => e.End != AnatomyInsertion.Wanted(cannula.Route == AccessRoute.Jugular) && of(e) >= Told).Take(4)
        .Select(e => FormattableString.Invariant($"{PlainWords.FromName(e.End.ToString())} {100 * of(e):F0} %")));
}
