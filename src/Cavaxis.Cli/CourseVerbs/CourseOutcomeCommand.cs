using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course outcome</c>: writes down what became of the patient.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseOutcomeCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseOutcomeCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course outcome</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>What.</summary>
        [CommandArgument(1, "<OUTCOME>")]
        [Description("What: weanedFromSupport, diedOnSupport, diedAfterSupport, bridgedToTransplant, bridgedToDevice, transferredOut, survivedToDischarge, aliveAt90Days, diedWithin90Days, aliveAt1Year or lostToFollowUp.")]
        public required string Outcome { get; init; }
    }

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) => Task.FromResult<CourseEvent>(new OutcomeNoted { Outcome = OptionText.Choice<OutcomeKind>(settings.Outcome, "OUTCOME"), Remark = settings.Remark });
}
