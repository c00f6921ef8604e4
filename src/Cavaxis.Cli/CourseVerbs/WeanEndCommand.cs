using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course wean end</c>: writes down that the running trial ended, and shows what it showed.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class WeanEndCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<WeanEndCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course wean end</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>How.</summary>
        [CommandArgument(1, "<END>")]
        [Description("How: completed, stoppedForPatient or stoppedOtherwise.")]
        public required string End { get; init; }

        /// <summary>Why.</summary>
        [CommandOption("--reason <TEXT>")]
        [Description("Why.")]
        public string? Reason { get; init; }

        /// <summary>Pump flow that was set afterwards.</summary>
        [CommandOption("--flow <LPERMIN>")]
        [Description("Pump flow that was set afterwards, L/min.")]
        public string? Flow { get; init; }

        /// <summary>Sweep gas that was set afterwards.</summary>
        [CommandOption("--sweep <LPERMIN>")]
        [Description("Sweep gas that was set afterwards, L/min.")]
        public string? Sweep { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        return new WeaningEnded
        {
            TrialEntry = WeaningSheet.OpenTrial((await visit.ReadAsync()).Course),
            End = OptionText.Choice<WeaningEnd>(settings.End, "END"),
            Reason = settings.Reason ?? settings.Remark,
            FlowLPerMin = OptionText.Number(settings.Flow, "--flow", "L/min"),
            SweepLPerMin = OptionText.Number(settings.Sweep, "--sweep", "L/min"),
        };
    }

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) => WeaningSheet.Of((await visit.ReadAsync()).Course);
}
