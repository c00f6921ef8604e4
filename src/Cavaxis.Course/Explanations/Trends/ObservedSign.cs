using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>One quantity in the window before and the window now.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Before">Value before; null where it was not observed.</param>
/// <param name="Now">Value now; null where the last reading is too old or there is none.</param>
/// <param name="LastReadHoursAgo">Age of the last reading, where one is known and too old.</param>
public sealed record ObservedSign(ObservedQuantity Quantity, Estimate? Before, Estimate? Now, double? LastReadHoursAgo = null);
