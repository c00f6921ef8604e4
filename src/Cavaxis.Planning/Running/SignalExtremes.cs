namespace Cavaxis.Planning.Running;

/// <summary>Lowest, mean and highest value of a signal over the settled breath.</summary>
/// <param name="Name">Name of the signal.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Lowest">Lowest sample.</param>
/// <param name="Mean">Mean over time.</param>
/// <param name="Highest">Highest sample.</param>
public sealed record SignalExtremes(string Name, string Unit, double Lowest, double Mean, double Highest);
