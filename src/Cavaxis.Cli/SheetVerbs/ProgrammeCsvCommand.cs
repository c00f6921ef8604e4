using System.ComponentModel;
using System.Text;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Exports;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary><c>programme csv</c>: the table of a programme, a row a patient.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class ProgrammeCsvCommand(CommandOutput output, SecretReader secrets) : PersonCommand<ProgrammeCsvCommand.Settings>(output, secrets)
{
    /// <summary>What <c>programme csv</c> takes.</summary>
    public sealed class Settings : PersonSettings
    {
        /// <summary>The programme.</summary>
        [CommandOption("--programme <NAME>")]
        [Description("The programme; left out, the only one whose outcomes you may read.")]
        public string? Programme { get; init; }

        /// <summary>The file.</summary>
        [CommandOption("--to <FILE>")]
        [Description("File to write; what is there is replaced once the new one is whole.")]
        public string? To { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        desk.RequireSomewhere(Verb.ReadOutcomes, "programme");
        string path = VerbText.Given(settings.To, "--to");
        string[] own = [.. desk.ProgrammesWith(Verb.ReadOutcomes)];
        Identifier programme = Identifier.Of(VerbText.Given(settings.Programme ?? (own.Length == 1 ? own[0] : null), "--programme"), "--programme");
        PatientAnswer<ProgrammeReading> answer =
            await new ProgrammeCourses(desk.Patients, new CourseRecords(desk.Patients, TimeProvider.System), TimeProvider.System).ReadAsync(desk.Person, programme.Text);
        Refusal.Unless(answer.Decision, "programme", programme.Text);
        ProgrammeReading reading = answer.Value!;

        // By the mark at its start spreadsheets know that it is UTF-8.
        byte[] bytes = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(ProgrammeCsv.Write(reading.Courses.Select(static c => c.Row)))];
        InputFile.WriteWhole(path, bytes);
        SheetText.Tell(Output, settings.Json, new SheetWritten(path, bytes.Length, reading.Courses.Count, reading.Incomplete), $"Table of the programme {programme.Text}");
    }
}
