using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;

namespace Cavaxis.Planning.Arterial;

/// <summary>Computes the arterial tree of every plan of a planning result that returns to an artery.</summary>
public static class PlanArteries
{
    /// <summary>Computes them.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="rules">The rule book that the plans were made with.</param>
    /// <param name="options">The options that the plans were made with.</param>
    /// <param name="planning">The planning result.</param>
    /// <param name="progress">Told the share that is done, on any thread.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The planning result with a glance on every such plan. The ranking stays.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static PlanningResult On(
        CaseFile caseFile, DeviceCatalogue catalogue, RuleBook rules, PlanningOptions options, PlanningResult planning, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(planning);
        PlacingPatient patient = new(caseFile, catalogue, rules, options);
        int all = planning.Plans.Count(ArteriesBasis.ReturnsToArtery);
        int done = 0;
        List<CannulationPlan> plans = [];
        foreach (CannulationPlan plan in planning.Plans)
        {
            if (!ArteriesBasis.ReturnsToArtery(plan))
            {
                plans.Add(plan);
                continue;
            }

            ArteriesBasis basis = ArteriesBasis.Connected(patient, plan, cancellation);
            ArteriesAnswer answer = basis.Circulation is null
                ? ArteriesAnswer.None(caseFile, basis.Words, basis.Reason)
                : ArteriesStudy.Of(new ArteriesQuestion(caseFile, catalogue, basis.Circulation, plan, basis.Words, basis.Assumed), null, cancellation);
            plans.Add(answer.Result is ArterialSupportResult result ? plan with { Arteries = Glance(result) } : plan);
            progress?.Report(++done / (double)all);
        }

        return planning with { Plans = plans };
    }

    /// <summary>A result in one line.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The line.</returns>
    public static ArterialGlance Glance(ArterialSupportResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        LimbReading? leg = result.Limbs.FirstOrDefault(static l => l.HasCannula);
        return new ArterialGlance(
            result.Mixing?.PlaceInWords ?? "nowhere",
            result.Mixing is { HalfOnDrawing: not null } mixing ? mixing.MeanHalfCm : null,
            Saturation(result, ArterialOrgan.Heart),
            Saturation(result, ArterialOrgan.HandRight),
            leg?.InWords ?? string.Empty,
            leg?.FlowMlPerMin,
            leg?.Supply == LimbSupply.Starved);
    }

    private static Quantities.Estimate Saturation(ArterialSupportResult result, ArterialOrgan organ) => result.Organs.First(o => o.Organ == organ).MeanSaturationPercent;
}
