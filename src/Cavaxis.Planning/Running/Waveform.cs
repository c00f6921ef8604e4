namespace Cavaxis.Planning.Running;

/// <summary>Samples of one signal.</summary>
/// <param name="Name">Name of the signal.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Values">Samples at equal steps, six digits.</param>
public sealed record Waveform(string Name, string Unit, IReadOnlyList<double> Values);
