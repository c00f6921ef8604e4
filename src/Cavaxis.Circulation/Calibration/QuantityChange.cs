using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Calibration;

/// <summary>A quantity before and after a change, as medians with bands that hold nine tenths of the members.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Before">Before the change.</param>
/// <param name="After">After it.</param>
/// <param name="Difference">After less before, member by member: what all members share cancels.</param>
public sealed record QuantityChange(CirculationQuantity Quantity, Estimate Before, Estimate After, Estimate Difference);
