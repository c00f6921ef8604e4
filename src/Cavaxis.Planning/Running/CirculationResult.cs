namespace Cavaxis.Planning.Running;

/// <summary>Everything that <c>circulation</c> says about a case.</summary>
/// <param name="CavaxisCirculation">Version of this format.</param>
/// <param name="Caution">The caution that stands on every result.</param>
/// <param name="CaseTitle">Title of the case.</param>
/// <param name="Invented">True when the case is invented.</param>
/// <param name="Settled">True when the circulation repeats itself breath by breath. When false there are no numbers.</param>
/// <param name="Reason">Why it has not settled; empty when it has.</param>
/// <param name="Calibrated">True when the numbers were fitted to the readings of the case first.</param>
/// <param name="Patient">What was computed with.</param>
/// <param name="Changes">Changes that were asked for.</param>
/// <param name="Quantities">The settled circulation in numbers.</param>
/// <param name="Extremes">Lowest, mean and highest value of every signal.</param>
/// <param name="Recirculation">Recirculation; null without venous return.</param>
/// <param name="AorticValveOpenPercent">Share of the beat with the aortic valve open; null when not settled.</param>
/// <param name="LeftVentricleLoop">Pressure-volume loop; null when not settled.</param>
/// <param name="RightVentricleLoop">Pressure-volume loop; null when not settled.</param>
/// <param name="Oxygen">Oxygen balance over a breath; null when not settled.</param>
/// <param name="Breath">Waveforms of one settled breath; null when not settled.</param>
/// <param name="OverTime">Waveforms over time from the moment of the changes on; null when no length was asked for.</param>
/// <param name="Parameters">Every number of the model.</param>
public sealed record CirculationResult(
    int CavaxisCirculation,
    string Caution,
    string CaseTitle,
    bool Invented,
    bool Settled,
    string Reason,
    bool Calibrated,
    RunningPatient Patient,
    IReadOnlyList<ChangeMade> Changes,
    IReadOnlyList<QuantityValue> Quantities,
    IReadOnlyList<SignalExtremes> Extremes,
    RecirculationOutlook? Recirculation,
    double? AorticValveOpenPercent,
    PressureVolumeLoop? LeftVentricleLoop,
    PressureVolumeLoop? RightVentricleLoop,
    OxygenBudgetRates? Oxygen,
    WaveformSet? Breath,
    WaveformSet? OverTime,
    IReadOnlyList<ParameterValue> Parameters)
{
    /// <summary>Version of the output format.</summary>
    public const int CurrentVersion = 1;
}
