using Cavaxis.Quantities;

namespace Cavaxis.Course.Criteria;

/// <summary>Where another source sets the threshold of the same criterion. Sources that disagree are both shown.</summary>
/// <param name="Value">Threshold, in the unit of the criterion.</param>
/// <param name="Source">Who sets it there.</param>
public sealed record OtherThreshold(double Value, Source Source);
