using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Reasoning;

/// <summary>A sign without a value now. It contributed nothing.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Words">Its words.</param>
/// <param name="LastReadHoursAgo">Age of the last reading where there is one that is too old; null where there is none.</param>
public sealed record MissingSign(ObservedQuantity Quantity, string Words, double? LastReadHoursAgo);
