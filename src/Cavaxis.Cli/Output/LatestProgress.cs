using Cavaxis.Planning.Insertion;

namespace Cavaxis.Cli.Output;

/// <summary>Keeps the latest word of work that tells how far it is, for a clock to read.</summary>
internal sealed class LatestProgress : IProgress<InsertionProgress>
{
    private readonly Lock gate = new();
    private InsertionProgress now;

    /// <summary>The furthest that was told.</summary>
    public InsertionProgress Now
    {
        get
        {
            lock (gate)
            {
                return now;
            }
        }
    }

    /// <inheritdoc/>
    public void Report(InsertionProgress value)
    {
        lock (gate)
        {
            now = value.Done > now.Done ? value : now;
        }
    }
}
