using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Numbers;

/// <summary>One number of the arterial support with where it comes from.</summary>
/// <param name="Name">Name in <c>catalogue/arterial-support.json</c>.</param>
/// <param name="Unit">Unit, "1" for none.</param>
/// <param name="Value">Value used.</param>
/// <param name="Low">Low end of what is plausible.</param>
/// <param name="High">High end of what is plausible.</param>
/// <param name="Meaning">What it is.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Certainty">How far the source was opened.</param>
public sealed record ArterialNumber(string Name, string Unit, double Value, double Low, double High, string Meaning, string Source, Certainty Certainty);
