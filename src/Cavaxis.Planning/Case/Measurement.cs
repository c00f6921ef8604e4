namespace Cavaxis.Planning.Case;

/// <summary>
/// A number with its measuring error. In the file it is a bare number (the field's usual error is then taken), an object
/// <c>{"value": 14.0, "sd": 0.7}</c>, or the word <c>"unknown"</c>, which reads as no measurement at all.
/// </summary>
/// <param name="Value">The value, in the unit of the field's name.</param>
/// <param name="Sd">Standard deviation of the measurement, same unit, not negative.</param>
/// <param name="SdGiven">True when the file gave the error; false when the usual error was taken.</param>
public sealed record Measurement(double Value, double Sd, bool SdGiven);
