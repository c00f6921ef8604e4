namespace Cavaxis.Arteries.Findings;

/// <summary>How well the computation has settled.</summary>
/// <param name="Beats">Beats until the tree repeated itself.</param>
/// <param name="PressureChange">Largest change of pressure from the last beat but one to the last, over the mean pressure.</param>
/// <param name="TransportBeats">Beats until the oxygen repeated itself.</param>
/// <param name="OxygenImbalance">Oxygen that leaves by all ends, less what enters by valve and pump, over what enters.</param>
/// <param name="Cells">Cells along all segments.</param>
/// <param name="StepsPerBeat">Time steps in the last beat.</param>
public sealed record SettlingRecord(int Beats, double PressureChange, int TransportBeats, double OxygenImbalance, int Cells, int StepsPerBeat);
