namespace Cavaxis.Records.Store;

/// <summary>What became of an append: <see cref="Appended"/> or <see cref="AppendConflict"/>.</summary>
public abstract record AppendOutcome
{
    private protected AppendOutcome()
    {
    }
}
