using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Running;

/// <summary>A computed quantity.</summary>
/// <param name="Name">Name; ends with its unit.</param>
/// <param name="Words">In plain words.</param>
/// <param name="Value">Value; null where it is not defined in this circulation.</param>
/// <param name="Unit">Unit; "1" for a pure number.</param>
/// <param name="NotDefined">Why there is no value; null where there is one.</param>
[Meaning("A quantity of the settled circulation, as it is measured at the bedside; calculated by the model.")]
public sealed record QuantityValue(string Name, string Words, double? Value, string Unit, string? NotDefined);
