using Cavaxis.Course.Observations;

namespace Cavaxis.Bedside.Fhir;

/// <summary>A reading that goes into a bundle.</summary>
/// <param name="Quantity">What.</param>
/// <param name="Value">Value in the unit of the quantity.</param>
/// <param name="At">When.</param>
/// <param name="Sd">Standard deviation in the same unit; null where none was given.</param>
public sealed record FhirReading(ObservedQuantity Quantity, double Value, DateTimeOffset At, double? Sd = null);
