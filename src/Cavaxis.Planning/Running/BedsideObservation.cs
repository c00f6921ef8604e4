using Cavaxis.Circulation.Signals;

namespace Cavaxis.Planning.Running;

/// <summary>One number read at the bedside, as the circulation knows it.</summary>
/// <param name="Field">Field of the case file.</param>
/// <param name="Quantity">What it is a reading of.</param>
/// <param name="Value">Value in the unit of the quantity.</param>
/// <param name="Sd">Standard deviation of the reading.</param>
public sealed record BedsideObservation(string Field, CirculationQuantity Quantity, double Value, double Sd);
