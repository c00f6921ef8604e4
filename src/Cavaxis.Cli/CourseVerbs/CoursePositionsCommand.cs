using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course positions</c>: where the cannulae lie, and what changed since an image last showed them.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CoursePositionsCommand(CommandOutput output, SecretReader secrets) : CourseCommand<OnePatientSettings>(output, secrets)
{
    private protected override Shown Show(CourseReading reading, OnePatientSettings settings, DateTimeOffset now) => PositionSheet.Of(reading.Course.CannulaeIn);
}
