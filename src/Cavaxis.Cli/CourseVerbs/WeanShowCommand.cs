using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course wean show</c>: the last trial of weaning, judged against the published criteria.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class WeanShowCommand(CommandOutput output, SecretReader secrets) : CourseCommand<OnePatientSettings>(output, secrets)
{
    private protected override Shown Show(CourseReading reading, OnePatientSettings settings, DateTimeOffset now) => WeaningSheet.Of(reading.Course);
}
