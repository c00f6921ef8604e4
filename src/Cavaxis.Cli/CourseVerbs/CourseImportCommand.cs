using System.ComponentModel;
using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Imports;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course import</c>: takes a file of monitor or circuit data in. Where rows are refused, nothing is written before a person accepts the others.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseImportCommand(CommandOutput output, SecretReader secrets) : PersonCommand<CourseImportCommand.Settings>(output, secrets)
{
    private static readonly TimeSpan LongestOffset = TimeSpan.FromHours(14);

    /// <summary>What <c>course import</c> takes.</summary>
    public sealed class Settings : OnePatientSettings
    {
        /// <summary>The file.</summary>
        [CommandArgument(1, "<FILE>")]
        [Description("CSV: a header with time and keys of quantities, then a row a time (docs/course-verbs.md).")]
        public required string File { get; init; }

        /// <summary>Offset of times that give none.</summary>
        [CommandOption("--offset <HH:MM>")]
        [Description("Offset from UTC of times in the file that give none, such as +01:00.")]
        public string? Offset { get; init; }

        /// <summary>Takes the good rows though others are refused.</summary>
        [CommandOption("--accept-good")]
        [Description("Take the good rows in though others are refused; without it such a file writes nothing.")]
        public bool AcceptGood { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        CourseVisit visit = new(desk, settings.Patient, Output);
        await visit.RequireAsync(Verb.Record);
        TimeSpan? offset = settings.Offset is null ? null : Offset(settings.Offset);
        ObservationImport import = ObservationCsv.Read(InputFile.ReadAll(settings.File, ObservationCsv.LargestBytes), Path.GetFileName(settings.File), offset);
        if (import.FaultCount > 0 && (!settings.AcceptGood || import.Good.Count == 0))
        {
            throw new InputFaultException([.. import.Faults, .. import.Good.Count == 0 ? Array.Empty<InputFault>() :
            [
                new InputFault(
                    FaultCode.Contradiction, "--accept-good", string.Create(CultureInfo.InvariantCulture, $"{import.FaultCount} faults, {import.Good.Count} good of {import.RowsRead} rows"), "a file without faults, or that someone accepts the good rows",
                    "Nothing was written. Mend the file, or look at the faults and give --accept-good."),
            ]]);
        }

        switch (Refusal.Granted(await new FileImports(visit.Courses).TakeInAsync(visit.Person, visit.Patient, import), visit.Patient))
        {
            case CourseWritten written:
                Tell(import, written.Version, settings.Json);
                break;
            case CourseRefused refused:
                throw new InputFaultException(refused.Faults);
            case CourseOutcome other:
                throw new InvalidOperationException($"{other.GetType().Name} is not an outcome of an import.");
        }
    }

    private void Tell(ObservationImport import, long version, bool json) => new Shown(
        new { import.FileName, import.FileSha256, import.RowsRead, rowsGood = import.Good.Count, version, import.FaultCount, refused = import.Faults },
        [
            string.Create(CultureInfo.InvariantCulture, $"{import.FileName}: {import.Good.Count} of {import.RowsRead} rows stand in the record, version {version}."),
            .. import.Faults.Select(static f => $"  refused: {f}"),
            .. import.FaultCount > import.Faults.Count ? [string.Create(CultureInfo.InvariantCulture, $"  and {import.FaultCount - import.Faults.Count} faults more.")] : Array.Empty<string>(),
        ]).Print(Output, json);

    private static TimeSpan Offset(string text)
    {
        bool west = text.StartsWith('-');
        return TimeSpan.TryParseExact(text.TrimStart('+', '-'), @"hh\:mm", CultureInfo.InvariantCulture, out TimeSpan size) && size <= LongestOffset
            ? west ? -size : size
            : throw OptionText.Wrong("--offset", text, "an offset from UTC of at most 14 h, such as +01:00", "Write sign, hours and minutes.");
    }
}
