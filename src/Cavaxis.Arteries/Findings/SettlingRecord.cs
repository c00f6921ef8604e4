namespace Cavaxis.Arteries.Findings;

/// <summary>How well the computation has settled.</summary>
/// <param name="Beats">Beats until the tree repeated itself.</param>
/// <param name="FlowChange">Largest change of area or velocity from the last beat but one to the last, over the largest of either.</param>
/// <param name="TransportBeats">Beats until the oxygen repeated itself.</param>
/// <param name="BloodSettled">True where it did; false where the mixing zone still moved when the run ended.</param>
/// <param name="OxygenImbalance">Oxygen that leaves by all ends, less what enters by valve and pump, over what enters.</param>
/// <param name="Cells">Cells along all segments.</param>
/// <param name="StepsPerBeat">Time steps in the last beat.</param>
public sealed record SettlingRecord(int Beats, double FlowChange, int TransportBeats, bool BloodSettled, double OxygenImbalance, int Cells, int StepsPerBeat);
