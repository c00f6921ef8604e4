using Cavaxis.Circulation.Signals;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Calibration;

/// <summary>A quantity before and after a change, as medians with bands that hold nine tenths of the members.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Before">Before the change; null where it is not defined in every member.</param>
/// <param name="After">After it; null where it is not defined in every member.</param>
/// <param name="Difference">After less before, member by member: what all members share cancels. Null where one of the two is.</param>
public sealed record QuantityChange(CirculationQuantity Quantity, Estimate? Before, Estimate? After, Estimate? Difference);
