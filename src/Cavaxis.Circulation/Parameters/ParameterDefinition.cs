using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Parameters;

/// <summary>What a number of the model means, its adult value, its accepted range and where it comes from.</summary>
/// <param name="Name">Name with its unit, as it is written on the command line.</param>
/// <param name="Unit">Unit in words of the trade.</param>
/// <param name="Value">Value of a resting adult of 70 kg.</param>
/// <param name="Low">Lowest accepted value in an adult.</param>
/// <param name="High">Highest accepted value in an adult.</param>
/// <param name="MassExponent">The value goes with body mass to this power; so do the bounds where that widens them.</param>
/// <param name="Meaning">Meaning in plain words.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Certainty">How sure that source is.</param>
/// <param name="Group">Part of the model.</param>
public sealed record ParameterDefinition(
    string Name,
    string Unit,
    double Value,
    double Low,
    double High,
    double MassExponent,
    string Meaning,
    string Source,
    Certainty Certainty,
    string Group);
