using Cavaxis.Course.Events;

namespace Cavaxis.Course.Patients;

/// <summary>One line of the course in plain words.</summary>
/// <param name="Sequence">Number of the entry as first written down.</param>
/// <param name="OccurredAt">When it happened.</param>
/// <param name="RecordedAt">When what holds now was written down.</param>
/// <param name="Who">Who wrote down what holds now.</param>
/// <param name="Kind">Kind of event; of a withdrawn entry, the kind that was withdrawn.</param>
/// <param name="Text">What happened, with units.</param>
/// <param name="IsWithdrawn">True where it was taken back; the text then says what and why.</param>
/// <param name="Earlier">What was said before it was put right, oldest first; empty where it never was.</param>
public sealed record TimelineLine(
    long Sequence, DateTimeOffset OccurredAt, DateTimeOffset RecordedAt, string Who, CourseEventKind Kind, string Text, bool IsWithdrawn, IReadOnlyList<string> Earlier);
