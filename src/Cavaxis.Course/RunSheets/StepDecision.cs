using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.RunSheets;

/// <summary>Whether an attempt at a step may be written down.</summary>
/// <param name="Accepted">The event to be written down; null where it may not be.</param>
/// <param name="Faults">Everything that is missing; empty where it may be.</param>
public sealed record StepDecision(CourseEvent? Accepted, IReadOnlyList<InputFault> Faults);
