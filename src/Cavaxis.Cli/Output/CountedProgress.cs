namespace Cavaxis.Cli.Output;

/// <summary>Keeps how many of a known number are done, for a clock to read.</summary>
internal sealed class CountedProgress : IProgress<int>
{
    private int done;

    /// <summary>How many are done.</summary>
    public int Done => Volatile.Read(ref done);

    /// <inheritdoc/>
    public void Report(int value) => Volatile.Write(ref done, value);
}
