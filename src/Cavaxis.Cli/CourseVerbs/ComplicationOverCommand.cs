using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course complication over</c>: writes down how a complication ended.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class ComplicationOverCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<ComplicationOverCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course complication over</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Number of the entry that told of it.</summary>
        [CommandArgument(1, "<ENTRY>")]
        [Description("Number of the entry that told of it.")]
        public required string Entry { get; init; }

        /// <summary>How it ended.</summary>
        [CommandOption("--result <TEXT>")]
        [Description("How it ended.")]
        public string? Result { get; init; }

        /// <summary>What it came to in the end.</summary>
        [CommandOption("--gravity <GRAVITY>")]
        [Description("What it came to in the end, where that is another than as first written.")]
        public string? Gravity { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        int entry = OptionText.Whole(settings.Entry, "ENTRY", 1, int.MaxValue);
        PatientCourse course = (await visit.ReadAsync()).Course;
        if (!course.Complications.Any(c => course.Refers(entry, c.Seen.Sequence) && c.Ended is null))
        {
            throw OptionText.Wrong("ENTRY", settings.Entry, "the number of an entry with a complication that is not over", "`course show` lists them.", FaultCode.NotFound);
        }

        return new ComplicationEnded { ComplicationEntry = entry, Gravity = OptionText.Maybe<ComplicationGravity>(settings.Gravity, "--gravity"), Result = VerbText.Given(settings.Result, "--result") };
    }
}
