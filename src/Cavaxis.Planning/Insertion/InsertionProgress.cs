namespace Cavaxis.Planning.Insertion;

/// <summary>How far an insertion study has come.</summary>
/// <param name="Done">Insertions that were followed.</param>
/// <param name="All">Insertions of the whole study.</param>
public readonly record struct InsertionProgress(int Done, int All);
