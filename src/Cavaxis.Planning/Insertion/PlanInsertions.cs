using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Insertion;

/// <summary>Tries wire and cannulae of every plan of a planning result in the same sampled anatomies, and says how each goes in.</summary>
public static class PlanInsertions
{
    /// <summary>Tries them.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="catalogue">Devices.</param>
    /// <param name="planning">The planning result.</param>
    /// <param name="options">Wire, anatomies, seed. What is done otherwise is not tried.</param>
    /// <param name="progress">Told after every insertion, on any thread.</param>
    /// <param name="cancellation">Ends the computation between anatomies.</param>
    /// <returns>The planning result with a glance on every plan, and with the predicted pitfalls at the steps of the chosen one. The ranking stays: the
    /// stiffness behind these shares is not published.</returns>
    /// <exception cref="InputFaultException">The number of anatomies is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static TriedPlans On(
        CaseFile caseFile,
        DeviceCatalogue catalogue,
        PlanningResult planning,
        InsertionOptions options,
        IProgress<InsertionProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(planning);
        ArgumentNullException.ThrowIfNull(options);
        InsertionStudy study = new(caseFile, catalogue, options with { Advice = false, Plays = false });
        InsertionCounter counter = new(planning.Plans.Sum(plan => plan.Cannulae.Count(InsertionStudy.IsStudied)) * options.Anatomies, progress);
        List<CannulationPlan> plans = [];
        InsertionResult? chosen = null;
        foreach (CannulationPlan plan in planning.Plans)
        {
            InsertionResult result = study.Of(planning, plan, counter, cancellation);
            chosen = plan.Rank == planning.ChosenPlan ? result : chosen;
            plans.Add(plan with { Insertion = Glance(result) });
        }

        return new TriedPlans(planning with { Plans = plans, Steps = chosen?.Steps ?? planning.Steps }, chosen);
    }

    /// <summary>Puts the study of one plan into a planning result that has chosen this plan.</summary>
    /// <param name="planning">The planning result.</param>
    /// <param name="result">The study of its chosen plan.</param>
    /// <returns>The planning result with the glance on that plan, the study, and the predicted pitfalls at the steps.</returns>
    /// <exception cref="ArgumentException">The study is that of another plan.</exception>
    public static TriedPlans With(PlanningResult planning, InsertionResult result)
    {
        ArgumentNullException.ThrowIfNull(planning);
        ArgumentNullException.ThrowIfNull(result);
        if (result.PlanRank != planning.ChosenPlan)
        {
            throw new ArgumentException("The study is that of another plan than the chosen one.", nameof(result));
        }

        CannulationPlan[] plans = [.. planning.Plans.Select(plan => plan.Rank == result.PlanRank ? plan with { Insertion = Glance(result) } : plan)];
        return new TriedPlans(planning with { Plans = plans, Steps = result.Steps }, result);
    }

    /// <summary>A study in one line.</summary>
    /// <param name="result">The study.</param>
    /// <returns>The line.</returns>
    public static InsertionGlance Glance(InsertionResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new InsertionGlance(
            result.Wire, result.Anatomies, result.EveryCannulaRight, string.Join(" ", result.Cannulae.Select(PredictedPitfalls.Worst).Where(static words => words.Length > 0)));
    }
}
