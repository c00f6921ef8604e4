using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Outlook;

/// <summary>The ranking table's row of a plan once its circulation is computed: oxygen and recirculation take the computed values in place of their limits.</summary>
internal static class OutlookCriteria
{
    /// <summary>The row.</summary>
    /// <param name="criteria">The row as the search wrote it.</param>
    /// <param name="outlook">The computed circulation.</param>
    /// <param name="scale">Points and weights.</param>
    /// <returns>The row, values in the same order.</returns>
    public static CriterionValue[] Of(IReadOnlyList<CriterionValue> criteria, CirculationOutlook outlook, CriteriaScale scale) =>
        [.. criteria.Select((c, i) => Computed(c.Name, outlook) is double value
            ? c with { Value = value, Points = scale.Points(i, value), OnCirculation = true }
            : c)];

    private static double? Computed(CriterionName name, CirculationOutlook outlook) => name switch
    {
        CriterionName.Saturation => outlook.RightArmSaturationPercent.Value,
        CriterionName.OxygenDelivery => outlook.DeliveryToConsumption.Value,
        CriterionName.RecirculationBound => outlook.RecirculationPercent?.Value / 100,
        _ => null,
    };
}
