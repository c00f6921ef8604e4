using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course change</c>: writes down that the circuit was connected otherwise or parts of it exchanged.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseChangeCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseChangeCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course change</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>How the circuit is connected now.</summary>
        [CommandArgument(1, "<CONFIGURATION>")]
        [Description("How the circuit is connected now: vvTwoSite, vvDualLumen, vaFemoral, vaAxillary or vavFemoral.")]
        public required string Configuration { get; init; }

        /// <summary>Why.</summary>
        [CommandOption("--reason <TEXT>")]
        [Description("Why.")]
        public string? Reason { get; init; }

        /// <summary>Identifier of a new pump in the catalogue.</summary>
        [CommandOption("--pump <ID>")]
        [Description("Identifier of a new pump in the catalogue.")]
        public string? Pump { get; init; }

        /// <summary>Identifier of a new membrane lung in the catalogue.</summary>
        [CommandOption("--lung <ID>")]
        [Description("Identifier of a new membrane lung in the catalogue.")]
        public string? Lung { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        if ((await visit.ReadAsync()).Course.Running is null)
        {
            throw OptionText.Wrong("PATIENT", visit.Patient, "a patient on support", "Write down first that it began (`course start`).", FaultCode.Contradiction);
        }

        return new SupportChanged
        {
            Configuration = OptionText.Choice<RunningConfiguration>(settings.Configuration, "CONFIGURATION"),
            Pump = settings.Pump,
            MembraneLung = settings.Lung,
            Reason = VerbText.Given(settings.Reason, "--reason"),
        };
    }
}
