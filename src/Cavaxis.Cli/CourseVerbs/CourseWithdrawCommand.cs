using System.ComponentModel;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Records.Access;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course withdraw</c>: takes an entry back as entered in error; it stays visible.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseWithdrawCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseWithdrawCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course withdraw</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Number of the entry.</summary>
        [CommandArgument(1, "<ENTRY>")]
        [Description("Number of the entry.")]
        public required string Entry { get; init; }

        /// <summary>Why.</summary>
        [CommandOption("--reason <TEXT>")]
        [Description("Why.")]
        public string? Reason { get; init; }
    }

    private protected override Verb Needs => Verb.Correct;

    private protected override async Task<IReadOnlyList<CourseWriting>> WritingsAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) =>
        [new CourseWriting(await EventAsync(visit, settings, at), at, EntryNumber.Find((await visit.ReadAsync()).Course, settings.Entry).Sequence)];

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) =>
        Task.FromResult<CourseEvent>(new EntryWithdrawn { Reason = VerbText.Given(settings.Reason, "--reason") });
}
