using Cavaxis.Course.Events;

namespace Cavaxis.Course.RunSheets;

/// <summary>Someone wants to write down that a step was done or passed over.</summary>
/// <param name="Event">A <see cref="StepDone"/> or a <see cref="StepSkipped"/>.</param>
/// <param name="Who">Name to sign in with of the person who writes.</param>
/// <param name="WhoName">Their name as the team knows it.</param>
/// <param name="OccurredAt">When it was done.</param>
public sealed record StepAttempt(CourseEvent Event, string Who, string WhoName, DateTimeOffset OccurredAt);
