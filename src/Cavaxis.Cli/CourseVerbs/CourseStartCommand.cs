using System.ComponentModel;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course start</c>: writes down that support began.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseStartCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CourseStartCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course start</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>How the circuit is connected.</summary>
        [CommandArgument(1, "<CONFIGURATION>")]
        [Description("How the circuit is connected: vvTwoSite, vvDualLumen, vaFemoral, vaAxillary or vavFemoral.")]
        public required string Configuration { get; init; }

        /// <summary>Identifier of the pump in the catalogue.</summary>
        [CommandOption("--pump <ID>")]
        [Description("Identifier of the pump in the catalogue.")]
        public string? Pump { get; init; }

        /// <summary>Identifier of the membrane lung in the catalogue.</summary>
        [CommandOption("--lung <ID>")]
        [Description("Identifier of the membrane lung in the catalogue.")]
        public string? Lung { get; init; }

        /// <summary>First readings.</summary>
        [CommandOption("--read <READING>")]
        [Description(ReadingText.Words)]
        public string[] Readings { get; init; } = [];
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        if ((await visit.ReadAsync()).Course.Running is not null)
        {
            throw OptionText.Wrong("PATIENT", visit.Patient, "a patient without running support", "Write down first how it ended (`course stop`), or that it was changed (`course change`).", FaultCode.Contradiction);
        }

        return new SupportStarted
        {
            Configuration = OptionText.Choice<RunningConfiguration>(settings.Configuration, "CONFIGURATION"),
            Pump = settings.Pump,
            MembraneLung = settings.Lung,
            Readings = ReadingText.All(settings.Readings, "--read"),
            Remark = settings.Remark,
        };
    }
}
