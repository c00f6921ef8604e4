namespace Cavaxis.Course.Events;

/// <summary>An event that holds now, with when and by whom.</summary>
/// <typeparam name="T">Kind of event.</typeparam>
/// <param name="Sequence">Number by which other entries refer to it: that of the entry as first written down.</param>
/// <param name="OccurredAt">When it happened.</param>
/// <param name="Who">Name to sign in with of the person who wrote down what holds now.</param>
/// <param name="Event">What happened.</param>
public sealed record Logged<T>(long Sequence, DateTimeOffset OccurredAt, string Who, T Event)
    where T : CourseEvent;
