using Cavaxis.Quantities;

namespace Cavaxis.Planning.Needs;

/// <summary>The numbers about the patient that planning works with, each with uncertainty and origin.</summary>
/// <param name="AgeYears">Age.</param>
/// <param name="HeightCm">Height.</param>
/// <param name="WeightKg">Weight.</param>
/// <param name="BodySurfaceAreaM2">Body surface area.</param>
/// <param name="HaemoglobinGPerDl">Haemoglobin.</param>
/// <param name="HaematocritPercent">Haematocrit.</param>
/// <param name="TemperatureC">Temperature.</param>
/// <param name="BloodViscosityMPaS">Viscosity of the blood at that haematocrit and temperature.</param>
/// <param name="CardiacOutputLPerMin">Native cardiac output before support.</param>
/// <param name="OxygenConsumptionMlPerMin">Oxygen consumption.</param>
/// <param name="CarbonDioxideProductionMlPerMin">Carbon dioxide production.</param>
/// <param name="MeanArterialPressureMmHg">Mean arterial pressure.</param>
/// <param name="CentralVenousPressureMmHg">Central venous pressure.</param>
public sealed record PatientPicture(
    double AgeYears,
    double HeightCm,
    double WeightKg,
    Estimate BodySurfaceAreaM2,
    Estimate HaemoglobinGPerDl,
    Estimate HaematocritPercent,
    Estimate TemperatureC,
    Estimate BloodViscosityMPaS,
    Estimate CardiacOutputLPerMin,
    Estimate OxygenConsumptionMlPerMin,
    Estimate CarbonDioxideProductionMlPerMin,
    Estimate MeanArterialPressureMmHg,
    Estimate CentralVenousPressureMmHg);
