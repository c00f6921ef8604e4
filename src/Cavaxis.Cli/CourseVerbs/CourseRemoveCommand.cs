using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course remove</c>: writes down that a cannula was taken out, and shows the follow-up that this asks for.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseRemoveCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseRemoveCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course remove</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Name of the cannula in this record.</summary>
        [CommandArgument(1, "<CANNULA>")]
        [Description("Name of the cannula in this record.")]
        public required string Cannula { get; init; }

        /// <summary>How.</summary>
        [CommandOption("--method <METHOD>")]
        [Description("How: pulledAndCompressed, skinSuture, closureDevice, surgicalRepair, fellOut or other.")]
        public string? Method { get; init; }

        /// <summary>Whether clot hung on it.</summary>
        [CommandOption("--clot <YESNO>")]
        [Description("Whether clot hung on it: yes or no; left out where it was not looked at.")]
        public string? Clot { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        _ = CourseVisit.Lying((await visit.ReadAsync()).Course, settings.Cannula);
        return new CannulaRemoved
        {
            Cannula = settings.Cannula,
            Method = OptionText.Given<RemovalMethod>(settings.Method, "--method"),
            ClotOnCannula = settings.Clot switch { null => null, "yes" => true, "no" => false, string other => throw OptionText.Wrong("--clot", other, "yes or no", "Leave it out where it was not looked at.") },
            Remark = settings.Remark,
        };
    }

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) => FollowUpSheet.Of((await visit.ReadAsync()).Course, visit.Now);
}
