using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course follow-up show</c>: the examinations that a course asks for after support.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class FollowUpShowCommand(CommandOutput output, SecretReader secrets) : CourseCommand<OnePatientSettings>(output, secrets)
{
    private protected override Shown Show(CourseReading reading, OnePatientSettings settings, DateTimeOffset now) => FollowUpSheet.Of(reading.Course, now);
}
