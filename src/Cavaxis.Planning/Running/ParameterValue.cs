using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>A number of the model.</summary>
/// <param name="Name">Name, as <c>--set</c> takes it.</param>
/// <param name="Value">Value.</param>
/// <param name="Unit">Unit; "1" for a pure number.</param>
/// <param name="Origin">How it came to be: measured, calculated, or estimated from the table by size.</param>
/// <param name="Low">Lowest accepted value for this size.</param>
/// <param name="High">Highest accepted value for this size.</param>
/// <param name="Meaning">In plain words.</param>
/// <param name="Source">Where the table's value comes from, with how sure that is.</param>
public sealed record ParameterValue(
    string Name, double Value, string Unit, Origin Origin, double Low, double High, string Meaning, string Source);
