namespace Cavaxis.Circulation.Signals;

/// <summary>Oxygen over a stretch of time, mL at standard conditions. What came in less what was used is what the stores gained.</summary>
/// <param name="Seconds">Length of the stretch, s.</param>
/// <param name="FromLungsMl">Breathed in, net of what was breathed out.</param>
/// <param name="FromMembraneMl">Given by the membrane lung.</param>
/// <param name="UsedMl">Used by the tissues.</param>
/// <param name="StoreChangeMl">Gain of blood and lung gas together.</param>
/// <param name="StoreMl">Oxygen in blood and lung gas at the start.</param>
public sealed record OxygenBudget(
    double Seconds, double FromLungsMl, double FromMembraneMl, double UsedMl, double StoreChangeMl, double StoreMl)
{
    /// <summary>What does not add up, mL: the error of the integration.</summary>
    public double ErrorMl => FromLungsMl + FromMembraneMl - UsedMl - StoreChangeMl;
}
