using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Course.FollowUp;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course follow-up plan</c>: plans an examination after support, or moves one of the schedule.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class FollowUpPlanCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<FollowUpPlanCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course follow-up plan</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Key of the item in the schedule.</summary>
        [CommandArgument(1, "<ITEM>")]
        [Description("Key of the item in the schedule, or a name of your own.")]
        public required string Item { get; init; }

        /// <summary>What is to be done; not needed for an item of the schedule.</summary>
        [CommandOption("--what <TEXT>")]
        [Description("What is to be done; not needed for an item of the schedule.")]
        public string? What { get; init; }

        /// <summary>Not before.</summary>
        [CommandOption("--from <TIME>")]
        [Description("Not before, with offset from UTC.")]
        public string? From { get; init; }

        /// <summary>Not after.</summary>
        [CommandOption("--by <TIME>")]
        [Description("Not after.")]
        public string? By { get; init; }

        /// <summary>Why.</summary>
        [CommandOption("--reason <TEXT>")]
        [Description("Why.")]
        public string? Reason { get; init; }
    }

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) => Task.FromResult<CourseEvent>(new FollowUpPlanned
    {
        Item = settings.Item,
        What = settings.What ?? FollowUpSchedule.Items.FirstOrDefault(i => i.Key == settings.Item)?.What ?? VerbText.Given(null, "--what"),
        DueFrom = VerbText.Given(settings.From, "--from"),
        DueBy = VerbText.Given(settings.By, "--by"),
        Reason = settings.Reason ?? settings.Remark,
    });

    private protected override async Task<Shown?> AfterAsync(CourseVisit visit, Settings settings) => FollowUpSheet.Of((await visit.ReadAsync()).Course, visit.Now);
}
