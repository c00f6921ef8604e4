namespace Cavaxis.Blood.CarbonDioxide;

/// <summary>A pH and the carbon dioxide tension that belongs to it.</summary>
/// <param name="PH">Plasma pH.</param>
/// <param name="Pco2MmHg">Carbon dioxide tension, mmHg.</param>
public readonly record struct AcidBaseState(double PH, double Pco2MmHg);
