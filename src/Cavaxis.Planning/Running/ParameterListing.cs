using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Json;

namespace Cavaxis.Planning.Running;

/// <summary>Every number of the model, for a case or for the adult of the table.</summary>
/// <param name="CavaxisParameters">Version of this format.</param>
/// <param name="MassKg">Body mass that the values and ranges hold for.</param>
/// <param name="ShortNames">Short names and what they stand for.</param>
/// <param name="Parameters">The numbers.</param>
public sealed record ParameterListing(
    int CavaxisParameters, double MassKg, IReadOnlyDictionary<string, string> ShortNames, IReadOnlyList<ParameterValue> Parameters)
{
    /// <summary>Version of the output format.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Lists the numbers.</summary>
    /// <param name="setup">The case; null for the adult of the table.</param>
    /// <param name="patient">The numbers.</param>
    /// <returns>The list.</returns>
    public static ParameterListing Of(CirculationSetup? setup, CirculationParameters patient)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return new ParameterListing(
            CurrentVersion,
            patient.MassKg,
            ChangeReader.ShortNames.ToDictionary(static n => n.Key, static n => JsonName.Of(ParameterTable.Of(n.Value).Name)),
            CirculationRun.Parameters(setup, patient, setup?.Parameters ?? patient));
    }
}
