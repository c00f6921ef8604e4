namespace Cavaxis.Course.GasExchange;

/// <summary>Where a dilution curve begins and ends. What lies outside is baseline.</summary>
/// <param name="FromS">Start of the passage, s.</param>
/// <param name="ToS">End of the passage, s, before the indicator comes round through the body.</param>
public readonly record struct DilutionWindow(double FromS, double ToS);
