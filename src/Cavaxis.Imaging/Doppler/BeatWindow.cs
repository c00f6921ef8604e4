namespace Cavaxis.Imaging.Doppler;

/// <summary>One beat of an envelope.</summary>
/// <param name="From">Its begin, columns from the left of the region.</param>
/// <param name="To">Its end: the begin of the next.</param>
public readonly record struct BeatWindow(double From, double To);
