using Cavaxis.Circulation.Signals;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>From which difference on a change of a quantity is worth telling: about what is told apart at the bedside. Assumptions.</summary>
internal static class ReadingTable
{
    private static readonly Dictionary<CirculationQuantity, double> Least = new()
    {
        [RecirculationPercent] = 1,
        [EffectiveFlowLPerMin] = 0.05,
        [PumpFlowLPerMin] = 0.05,
        [NativeOutputLPerMin] = 0.1,
        [LungFlowLPerMin] = 0.1,
        [SystemicFlowLPerMin] = 0.1,
        [RightArmSaturationPercent] = 0.5,
        [PreMembraneSaturationPercent] = 0.5,
        [VenousSaturationPercent] = 0.5,
        [PostMembraneSaturationPercent] = 0.5,
        [DeliveryOverConsumption] = 0.05,
        [MeanArterialPressureMmHg] = 1,
        [CentralVenousPressureMmHg] = 0.3,
        [WedgePressureMmHg] = 0.5,
        [PulmonaryArteryMeanMmHg] = 0.5,
        [AorticValveOpenPercent] = 0.5,
        [LeftVentricularEndDiastolicVolumeMl] = 2,
        [LeftVentricularEndSystolicVolumeMl] = 2,
        [InletPressureMmHg] = 2,
        [RightArmPco2MmHg] = 0.5,
        [OxygenFromLungsMlPerMin] = 3,
        [OxygenFromMembraneMlPerMin] = 3,
        [DrainageLowestOpenness] = 0.02,
        [SystemicResistanceWoodUnits] = 0.2,
    };

    /// <summary>Whether a quantity has a bound of its own, as those that are read have.</summary>
    /// <param name="quantity">Which.</param>
    public static bool IsRead(CirculationQuantity quantity) => Least.ContainsKey(quantity);

    /// <summary>The bound of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>In its unit; a hundredth where the table has none.</returns>
    public static double LeastOf(CirculationQuantity quantity) => Least.GetValueOrDefault(quantity, 0.01);
}
