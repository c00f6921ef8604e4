using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Anatomy.Population;

/// <summary>How strongly a dimension follows a shared cause.</summary>
/// <param name="Factor">The cause.</param>
/// <param name="Dimension">The dimension.</param>
/// <param name="Loading">Correlation of the dimension with the cause, between −1 and 1.</param>
public sealed record FactorLoading(AxisFactor Factor, AxisDimension Dimension, double Loading);
