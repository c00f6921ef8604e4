using Cavaxis.Anatomy.Axis;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>One part of a measured sum.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="Weight">How often it enters; −1 where it is subtracted.</param>
public readonly record struct AxisTerm(AxisDimension Dimension, double Weight = 1);
