using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course wean start</c>: writes down that a trial of weaning began.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class WeanStartCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<WeanStartCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course wean start</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>How support is taken back.</summary>
        [CommandArgument(1, "<METHOD>")]
        [Description("How support is taken back: flowSteps, sweepSteps, retrogradeFlow or other.")]
        public required string Method { get; init; }

        /// <summary>What was read before.</summary>
        [CommandOption("--read <READING>")]
        [Description(ReadingText.Words)]
        public string[] Readings { get; init; } = [];
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        if ((await visit.ReadAsync()).Course.Running is null)
        {
            throw OptionText.Wrong("PATIENT", visit.Patient, "a patient on support", "Write down first that it began (`course start`).", FaultCode.Contradiction);
        }

        return new WeaningStarted { Method = OptionText.Choice<WeaningMethod>(settings.Method, "METHOD"), Readings = ReadingText.All(settings.Readings, "--read"), Remark = settings.Remark };
    }
}
