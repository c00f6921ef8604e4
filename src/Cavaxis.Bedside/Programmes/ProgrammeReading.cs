using Cavaxis.Course.Outcomes;

namespace Cavaxis.Bedside.Programmes;

/// <summary>The courses of a programme as they were read.</summary>
/// <param name="Programme">Which.</param>
/// <param name="Courses">What each adds, in the order of admission.</param>
/// <param name="Incomplete">Of how many not everything could be read; they are counted by what could, and that must be told.</param>
public sealed record ProgrammeReading(string Programme, IReadOnlyList<CourseCount> Courses, int Incomplete)
{
    /// <summary>The cases that are counted.</summary>
    public IReadOnlyList<ProgrammeCase> Cases => [.. Courses.Where(static c => c.Case is not null).Select(static c => c.Case!)];

    /// <summary>How many are left out for a reason.</summary>
    /// <param name="reason">The reason.</param>
    /// <returns>How many.</returns>
    public int LeftOut(LeftOutReason reason) => Courses.Count(c => c.LeftOut == reason);
}
