namespace Cavaxis.Bedside.Programmes;

/// <summary>How far the reading of a programme has come.</summary>
/// <param name="Read">Courses read.</param>
/// <param name="Of">Of how many.</param>
public readonly record struct ProgrammeProgress(int Read, int Of);
