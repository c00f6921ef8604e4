namespace Cavaxis.Planning.Insertion;

/// <summary>Counts insertions on several threads and tells whoever listens.</summary>
/// <param name="all">Insertions of the whole study.</param>
/// <param name="listener">Who is told; nobody where null.</param>
internal sealed class InsertionCounter(int all, IProgress<InsertionProgress>? listener)
{
    private int done;

    /// <summary>Some more were followed.</summary>
    /// <param name="more">How many.</param>
    public void Count(int more) => listener?.Report(new InsertionProgress(Interlocked.Add(ref done, more), all));
}
