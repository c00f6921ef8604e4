using Cavaxis.Planning.Plans;

namespace Cavaxis.Planning.Running;

/// <summary>The patient and the circuit as the circulation takes them.</summary>
/// <param name="CirculatoryMassKg">Body mass that vessels and heart are scaled to; fat counts less than its weight.</param>
/// <param name="BloodVolumeMl">Blood in the patient.</param>
/// <param name="CarbonDioxide">The carbon dioxide curve of this blood, with its largest error.</param>
/// <param name="Circuit">The circuit; null when none runs.</param>
/// <param name="Assumed">What the case does not say, and what was used instead.</param>
/// <param name="NotChecked">What was not checked or is not part of the model.</param>
public sealed record RunningPatient(
    double CirculatoryMassKg, double BloodVolumeMl, CarbonDioxideFit CarbonDioxide, CircuitParts? Circuit, IReadOnlyList<MissingInput> Assumed, IReadOnlyList<string> NotChecked);
