using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Imports;

/// <summary>A row of a file in which every cell is in order.</summary>
/// <param name="Line">Line of the file, the header being line 1.</param>
/// <param name="At">When it was read.</param>
/// <param name="Readings">At least one reading; empty cells are not readings.</param>
public sealed record ImportRow(int Line, DateTimeOffset At, IReadOnlyList<Reading> Readings);
