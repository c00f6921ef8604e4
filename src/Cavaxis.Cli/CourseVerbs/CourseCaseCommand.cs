using System.ComponentModel;
using System.Text;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Case;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course case</c>: saves a case file as the case of the patient.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseCaseCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseCaseCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course case</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>The case file (docs/case-file.</summary>
        [CommandArgument(1, "<FILE>")]
        [Description("The case file (docs/case-file.md), free of faults.")]
        public required string File { get; init; }

        /// <summary>What was changed against the case before.</summary>
        [CommandOption("--change <TEXT>")]
        [Description("What was changed against the case before.")]
        public string? Change { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        string text = CatalogueLoader.Text(settings.File, CaseFileReader.LargestFileBytes);
        _ = CaseFileReader.Read(Encoding.UTF8.GetBytes(text), settings.File);
        long? before = (await visit.ReadAsync()).Course.Case?.Sequence;
        return new CaseSaved { CaseText = text, BasedOn = before is long entry ? checked((int)entry) : null, Change = settings.Change };
    }
}
