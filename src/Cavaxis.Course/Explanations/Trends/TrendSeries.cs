using System.Collections.Immutable;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>Readings of one quantity over time, in any order.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Readings">Readings.</param>
public sealed record TrendSeries(ObservedQuantity Quantity, ImmutableArray<TimedReading> Readings);
