using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>Something that went wrong, and how it ended.</summary>
/// <param name="Seen">What was seen.</param>
/// <param name="Ended">How it ended; null while it goes on or where that was not written down.</param>
public sealed record ComplicationLog(Logged<ComplicationSeen> Seen, Logged<ComplicationEnded>? Ended)
{
    /// <summary>What it came to, as known now.</summary>
    public ComplicationGravity Gravity => Ended?.Event.Gravity ?? Seen.Event.Gravity;
}
