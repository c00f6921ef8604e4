namespace Cavaxis.Devices.MembraneLungs;

/// <summary>Oxygen given to the blood by a membrane lung.</summary>
/// <param name="MlPerMin">Oxygen bound by haemoglobin, mL/min at standard conditions; what is dissolved on top is not counted.</param>
/// <param name="OutletSaturation">Saturation of the blood that leaves, 0 to 1.</param>
/// <param name="CeilingMlPerMin">What full saturation of the same blood would take up.</param>
public sealed record OxygenTransfer(double MlPerMin, double OutletSaturation, double CeilingMlPerMin);
