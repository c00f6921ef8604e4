using System.ComponentModel;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course correct</c>: puts an entry right; the earlier one stays visible, and a note says why.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseCorrectCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseCorrectCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course correct</c> takes.</summary>
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

        /// <summary>The fields that were wrong.</summary>
        [CommandOption("--set <FIELD=VALUE>")]
        [Description("A field as it should be, such as depthCm=23 or readings[0].value=4.1; null takes a field away; may be given several times. --at puts its time right.")]
        public string[] Sets { get; init; } = [];
    }

    private protected override Verb Needs => Verb.Correct;

    private protected override async Task<IReadOnlyList<CourseWriting>> WritingsAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        string reason = VerbText.Given(settings.Reason, "--reason");
        if (settings.Sets.Length == 0 && at is null)
        {
            throw OptionText.Wrong("--set", "(nothing)", "--set FIELD=VALUE, or --at TIME", "Say what it should be.", FaultCode.MissingField);
        }

        StandingEntry standing = EntryNumber.Find((await visit.ReadAsync()).Course, settings.Entry);
        CourseEvent instead = CourseEventJson.Read(
            CourseEventTable.Of(standing.Now.Event).Text,
            Encoding.UTF8.GetBytes(FieldText.Set(JsonNode.Parse(CourseEventJson.Write(standing.Now.Event).Span)!.AsObject(), settings.Sets).ToJsonString()));
        return
        [
            new CourseWriting(instead, at ?? standing.Now.OccurredAt, standing.Sequence),
            new CourseWriting(new NoteWritten { Text = string.Create(CultureInfo.InvariantCulture, $"Entry {standing.Sequence} put right: {reason}") }),
        ];
    }

    private protected override Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at) => throw new InvalidOperationException("A correction is two events.");
}
