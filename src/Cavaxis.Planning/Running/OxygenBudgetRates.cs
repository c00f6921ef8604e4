using Cavaxis.Circulation.Signals;

namespace Cavaxis.Planning.Running;

/// <summary>Oxygen balance over one settled breath, as rates in mL/min at standard conditions.</summary>
/// <param name="FromLungsMlPerMin">Breathed in, net.</param>
/// <param name="FromMembraneMlPerMin">Given by the membrane lung.</param>
/// <param name="UsedMlPerMin">Used by the tissues.</param>
/// <param name="StoreChangeMlPerMin">Gain of the stores in blood and lung gas over the breath.</param>
/// <param name="ErrorMlPerMin">What does not add up: in less used less gain.</param>
/// <param name="StoreMl">Oxygen in blood and lung gas.</param>
public sealed record OxygenBudgetRates(
    double FromLungsMlPerMin, double FromMembraneMlPerMin, double UsedMlPerMin, double StoreChangeMlPerMin, double ErrorMlPerMin, double StoreMl)
{
    /// <summary>The rates of a budget.</summary>
    /// <param name="budget">Amounts over a stretch of time.</param>
    /// <returns>Rates.</returns>
    public static OxygenBudgetRates Of(OxygenBudget budget)
    {
        ArgumentNullException.ThrowIfNull(budget);
        double perMin = 60 / budget.Seconds;
        return new OxygenBudgetRates(
            budget.FromLungsMl * perMin, budget.FromMembraneMl * perMin, budget.UsedMl * perMin, budget.StoreChangeMl * perMin, budget.ErrorMl * perMin, budget.StoreMl);
    }
}
