namespace Cavaxis.Bench;

/// <summary>What one piece of work costs.</summary>
/// <param name="WallMs">Least wall time of one run, ms: what else the machine does can only add to it.</param>
/// <param name="MedianMs">Median wall time, ms.</param>
/// <param name="ProcessorMs">Least processor time of one run over all cores, ms.</param>
/// <param name="AllocatedBytes">Bytes allocated by one run, median.</param>
/// <param name="Runs">Number of runs measured.</param>
internal sealed record Timing(double WallMs, double MedianMs, double ProcessorMs, double AllocatedBytes, int Runs);
