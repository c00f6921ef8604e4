using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Running;

/// <summary>A case as the circulation takes it.</summary>
/// <param name="Parameters">The numbers of the model.</param>
/// <param name="Origins">How the numbers that the case speaks about came to be; all others are estimated from the table by size.</param>
/// <param name="Assumed">What the case does not say, and what was used instead.</param>
/// <param name="NotChecked">What the case says and the circulation does not use.</param>
/// <param name="CarbonDioxide">The carbon dioxide curve.</param>
/// <param name="Circuit">The circuit; null when none runs.</param>
/// <param name="Observations">Readings to compare with.</param>
public sealed record CirculationSetup(
    CirculationParameters Parameters,
    IReadOnlyDictionary<CirculationParameter, Origin> Origins,
    IReadOnlyList<MissingInput> Assumed,
    IReadOnlyList<string> NotChecked,
    CarbonDioxideFit CarbonDioxide,
    CircuitParts? Circuit,
    IReadOnlyList<CaseReading> Observations);
