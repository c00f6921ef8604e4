using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Quantities;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course observe</c>: writes down what was read, with its unit.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseObserveCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseObserveCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course observe</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>What was read.</summary>
        [CommandArgument(1, "<QUANTITY>")]
        [Description("What was read, such as pumpFlowLPerMin.")]
        public required string Quantity { get; init; }

        /// <summary>The value.</summary>
        [CommandArgument(2, "<VALUE>")]
        [Description("The value, with its standard deviation after ± where it is known.")]
        public required string Value { get; init; }

        /// <summary>Its unit; 1 for none.</summary>
        [CommandArgument(3, "<UNIT>")]
        [Description("Its unit; 1 for none.")]
        public required string Unit { get; init; }

        /// <summary>How the number came to be.</summary>
        [CommandOption("--origin <ORIGIN>")]
        [Description("How the number came to be: measured, calculated or estimated [[measured]].")]
        public string Origin { get; init; } = "measured";

        /// <summary>How it was read.</summary>
        [CommandOption("--method <TEXT>")]
        [Description("How it was read.")]
        public string? Method { get; init; }

        /// <summary>More readings of the same time.</summary>
        [CommandOption("--read <READING>")]
        [Description(ReadingText.Words)]
        public string[] Readings { get; init; } = [];
    }

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) => Task.FromResult<CourseEvent>(new Observed
    {
        Readings = [ReadingText.Of(settings.Quantity, settings.Value, settings.Unit, settings.Quantity, OptionText.Choice<Origin>(settings.Origin, "--origin"), settings.Method), .. ReadingText.All(settings.Readings, "--read")],
        Remark = settings.Remark,
    });
}
