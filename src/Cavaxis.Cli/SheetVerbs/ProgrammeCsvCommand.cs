using System.ComponentModel;
using System.Text;
using Cavaxis.Bedside.CourseFiles;
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
        PatientAnswer<CourseText> answer = await new CourseSheets(desk.Patients, TimeProvider.System).ProgrammeAsync(desk.Person, programme);
        Refusal.Unless(answer.Decision, "programme", programme.Text);
        CourseText made = answer.Value!;

        // By the mark at its start spreadsheets know that it is UTF-8.
        byte[] bytes = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(made.Text)];
        InputFile.WriteWhole(path, bytes);
        SheetText.Tell(Output, settings.Json, new SheetWritten(path, bytes.Length, made.Count, made.Unread), $"Table of the programme {programme.Text}");
    }
}
