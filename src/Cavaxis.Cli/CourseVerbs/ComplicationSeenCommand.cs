using System.ComponentModel;
using Cavaxis.Anatomy.Body;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course complication seen</c>: writes down that something went wrong.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class ComplicationSeenCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<ComplicationSeenCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course complication seen</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>What.</summary>
        [CommandArgument(1, "<KIND>")]
        [Description("What, such as limbIschaemia or cannulaMalposition; a wrong word lists them all.")]
        public required string Kind { get; init; }

        /// <summary>What it came to.</summary>
        [CommandOption("--gravity <GRAVITY>")]
        [Description("What it came to: watched, treated, procedure, lifeThreatening or fatal.")]
        public string? Gravity { get; init; }

        /// <summary>The cannula concerned.</summary>
        [CommandOption("--cannula <NAME>")]
        [Description("The cannula concerned, where one is.")]
        public string? Cannula { get; init; }

        /// <summary>The patient's own side.</summary>
        [CommandOption("--side <SIDE>")]
        [Description("The patient's own side: right or left.")]
        public string? Side { get; init; }

        /// <summary>What was seen.</summary>
        [CommandOption("--description <TEXT>")]
        [Description("What was seen.")]
        public string? Seen { get; init; }

        /// <summary>What was done.</summary>
        [CommandOption("--action <TEXT>")]
        [Description("What was done.")]
        public string? Action { get; init; }
    }

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) => Task.FromResult<CourseEvent>(new ComplicationSeen
    {
        Complication = OptionText.Choice<ComplicationKind>(settings.Kind, "KIND"),
        Gravity = OptionText.Given<ComplicationGravity>(settings.Gravity, "--gravity"),
        Cannula = settings.Cannula,
        Side = OptionText.Maybe<BodySide>(settings.Side, "--side"),
        Description = settings.Seen ?? settings.Remark,
        Action = settings.Action,
    });
}
