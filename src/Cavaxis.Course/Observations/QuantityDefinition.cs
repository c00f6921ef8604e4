using System.Text.Json;

namespace Cavaxis.Course.Observations;

/// <summary>Words, unit, accepted range and usual spread of something that can be observed.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Words">Lower-case words without unit.</param>
/// <param name="Unit">Unit as people read it; 1 for none.</param>
/// <param name="Ucum">The same unit in the Unified Code for Units of Measure.</param>
/// <param name="Low">Lowest accepted value.</param>
/// <param name="High">Highest accepted value.</param>
/// <param name="UsualSd">Standard deviation of one reading where none is given.</param>
public sealed record QuantityDefinition(ObservedQuantity Quantity, string Words, string Unit, string Ucum, double Low, double High, double UsualSd)
{
    /// <summary>Name in files: camelCase with the unit.</summary>
    public string Key { get; } = JsonNamingPolicy.CamelCase.ConvertName(Quantity.ToString());
}
