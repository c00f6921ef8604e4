using Cavaxis.Course.Observations;

namespace Cavaxis.Web.Pages.Run;

/// <summary>Quantities that are read at the same place at the bedside.</summary>
/// <param name="Key">Short name.</param>
/// <param name="Words">Heading.</param>
/// <param name="First">First quantity, in the order of <see cref="ObservedQuantity"/>.</param>
/// <param name="Last">Last quantity.</param>
internal sealed record QuantityGroup(string Key, string Words, ObservedQuantity First, ObservedQuantity Last)
{
    /// <summary>All groups; together they hold every quantity once.</summary>
    public static IReadOnlyList<QuantityGroup> All { get; } =
    [
        new("support", "Circuit", ObservedQuantity.PumpFlowLPerMin, ObservedQuantity.LineChatterPerMin),
        new("blood", "Blood and oxygen", ObservedQuantity.RightArmSaturationPercent, ObservedQuantity.UrineMlPerH),
        new("heart", "Pressures and heart", ObservedQuantity.MeanArterialPressureMmHg, ObservedQuantity.AbdominalPressureMmHg),
        new("breath", "Breathing", ObservedQuantity.InspiredOxygenFraction, ObservedQuantity.PlateauPressureCmH2O),
        new("clotting", "Clotting", ObservedQuantity.ActivatedClottingTimeS, ObservedQuantity.HeparinUnitsPerH),
    ];

    /// <summary>Its quantities.</summary>
    public IEnumerable<QuantityDefinition> Quantities => QuantityTable.All.Where(d => d.Quantity >= First && d.Quantity <= Last);
}
