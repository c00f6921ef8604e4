using System.ComponentModel;
using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary><c>patient show</c>: the events of a patient as they were written down.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class PatientShowCommand(CommandOutput output, SecretReader secrets) : PersonCommand<PatientShowCommand.Settings>(output, secrets)
{
    /// <summary>What <c>patient show</c> takes.</summary>
    public sealed class Settings : OnePatientSettings
    {
        /// <summary>Only this kind.</summary>
        [CommandOption("--kind <KIND>")]
        [Description("Only events of this kind.")]
        public string? Kind { get; init; }

        /// <summary>From when on.</summary>
        [CommandOption("--from <TIME>")]
        [Description("Only what happened then or later, such as 2031-02-03T04:05:06Z.")]
        public string? From { get; init; }

        /// <summary>Until when.</summary>
        [CommandOption("--before <TIME>")]
        [Description("Only what happened earlier.")]
        public string? Before { get; init; }
    }

    private protected override async Task DoAsync(RecordDesk desk, Settings settings)
    {
        PatientAnswer<StreamReading> answer = await desk.Patients.ReadAsync(
            desk.Person, settings.Patient, settings.Kind is null ? null : EventKind.Of(settings.Kind), Time(settings.From, "--from"), Time(settings.Before, "--before"));
        StreamReading reading = Refusal.Granted(answer, settings.Patient);
        if (answer.AuditFault is not null)
        {
            Output.Progress($"This look could not be kept in the audit: {answer.AuditFault}");
        }

        EventText.Write(Output, settings.Json, reading.Events, reading.Spoiled);
    }

    private static DateTimeOffset? Time(string? text, string option) => text is null ? null
        : DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out DateTimeOffset time) ? time
        : throw new InputFaultException(new InputFault(FaultCode.WrongKind, option, InputFault.Shown(text), "a time such as 2031-02-03T04:05:06Z", "Write it so."));
}
