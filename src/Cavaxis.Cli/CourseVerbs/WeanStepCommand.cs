using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course wean step</c>: writes down a step of the running trial, and shows how the trial stands.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class WeanStepCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<WeanStepCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course wean step</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Pump flow at this step.</summary>
        [CommandOption("--flow <LPERMIN>")]
        [Description("Pump flow at this step, L/min; negative where it runs backwards.")]
        public string? Flow { get; init; }

        /// <summary>Sweep gas at this step.</summary>
        [CommandOption("--sweep <LPERMIN>")]
        [Description("Sweep gas at this step, L/min; 0 where it is off.")]
        public string? Sweep { get; init; }

        /// <summary>Oxygen fraction of the sweep gas.</summary>
        [CommandOption("--sweep-oxygen <FRACTION>")]
        [Description("Oxygen fraction of the sweep gas, 0.21 to 1.")]
        public string? SweepOxygen { get; init; }

        /// <summary>How long the step was held before the readings.</summary>
        [CommandOption("--held <MINUTES>")]
        [Description("How long the step was held before the readings.")]
        public string? Held { get; init; }

        /// <summary>What was read at its end.</summary>
        [CommandOption("--read <READING>")]
        [Description(ReadingText.Words)]
        public string[] Readings { get; init; } = [];
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        return new WeaningStepped
        {
            TrialEntry = WeaningSheet.OpenTrial((await visit.ReadAsync()).Course),
            FlowLPerMin = OptionText.Number(settings.Flow, "--flow", "L/min"),
            SweepLPerMin = OptionText.Number(settings.Sweep, "--sweep", "L/min"),
            SweepOxygenFraction = OptionText.Number(settings.SweepOxygen, "--sweep-oxygen", string.Empty),
            MinutesHeld = OptionText.Number(settings.Held, "--held", "min"),
            Readings = ReadingText.All(settings.Readings, "--read"),
            Remark = settings.Remark,
        };
    }

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) => WeaningSheet.Of((await visit.ReadAsync()).Course);
}
