using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course stop</c>: writes down that support ended.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseStopCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseStopCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course stop</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Why.</summary>
        [CommandArgument(1, "<REASON>")]
        [Description("Why: recovered, bridged, died, withdrawn, complication, transferred or other.")]
        public required string Reason { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        if ((await visit.ReadAsync()).Course.Running is null)
        {
            throw OptionText.Wrong("PATIENT", visit.Patient, "a patient on support", "Write down first that it began (`course start`).", FaultCode.Contradiction);
        }

        return new SupportEnded { Reason = OptionText.Choice<SupportEndReason>(settings.Reason, "REASON"), Remark = settings.Remark };
    }
}
