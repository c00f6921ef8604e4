using Cavaxis.Anatomy.Axis;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>One dimension of this patient's axis as planning sees it.</summary>
/// <param name="Dimension">Which.</param>
/// <param name="Value">Median with 90 % interval; measured where the case measured it.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="PopulationSource">Where the population value comes from.</param>
public sealed record AxisValue(AxisDimension Dimension, Estimate Value, string Unit, Source PopulationSource);
