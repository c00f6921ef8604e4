using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>A change of one quantity that stands out of the noise.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Change">Median after less median before, unit of the quantity.</param>
/// <param name="Sd">Its standard deviation.</param>
/// <param name="Sentence">The same in words.</param>
public sealed record SeriesChange(ObservedQuantity Quantity, double Change, double Sd, string Sentence);
