using Cavaxis.Course.Events;
using Cavaxis.Planning.Case;

namespace Cavaxis.Course.Patients;

/// <summary>One run of support, from its start to its end.</summary>
/// <param name="Started">How it began.</param>
/// <param name="Changes">How the circuit was changed, oldest first.</param>
/// <param name="Ended">How it ended; null while it goes on.</param>
public sealed record SupportRun(Logged<SupportStarted> Started, IReadOnlyList<Logged<SupportChanged>> Changes, Logged<SupportEnded>? Ended)
{
    /// <summary>How the circuit is connected, or last was.</summary>
    public RunningConfiguration Configuration => Changes.Count > 0 ? Changes[^1].Event.Configuration : Started.Event.Configuration;

    /// <summary>How long it lasted up to its end or to a moment.</summary>
    /// <param name="moment">The moment, where it goes on.</param>
    /// <returns>The time; nothing before the start.</returns>
    public TimeSpan Lasted(DateTimeOffset moment)
    {
        DateTimeOffset end = Ended?.OccurredAt ?? moment;
        return end > Started.OccurredAt ? end - Started.OccurredAt : TimeSpan.Zero;
    }
}
