namespace Cavaxis.Course.Patients;

/// <summary>One reading in the course of a quantity.</summary>
/// <param name="At">When it was read.</param>
/// <param name="Value">The value in the unit of the quantity.</param>
/// <param name="Sd">Standard deviation: as given, or the usual one of the quantity.</param>
/// <param name="SdGiven">True where it was given with the reading.</param>
/// <param name="Sequence">Number of the entry that holds it.</param>
/// <param name="Method">How it was read; null where that was not said.</param>
/// <param name="IsImported">True where it came from a file.</param>
public sealed record SeriesPoint(DateTimeOffset At, double Value, double Sd, bool SdGiven, long Sequence, string? Method, bool IsImported);
