using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Courses;

/// <summary>Nothing was kept: what was to be written has faults.</summary>
/// <param name="Faults">At least one.</param>
public sealed record CourseRefused(IReadOnlyList<InputFault> Faults) : CourseOutcome;
