namespace Cavaxis.Bedside.Courses;

/// <summary>What became of a writing: <see cref="CourseWritten"/>, <see cref="CourseConflict"/> or <see cref="CourseRefused"/>.</summary>
public abstract record CourseOutcome
{
    private protected CourseOutcome()
    {
    }
}
