using System.ComponentModel;
using Cavaxis.Anatomy.Body;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Planning.Configurations;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course place</c>: writes down that a cannula was placed.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CoursePlaceCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CoursePlaceCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course place</c> takes.</summary>
    public sealed class Settings : OneCannulaSettings
    {
        /// <summary>What it does.</summary>
        [CommandOption("--role <ROLE>")]
        [Description("What it does: drainage, venousReturn, arterialReturn, dualLumen or distalPerfusion.")]
        public string? Role { get; init; }

        /// <summary>Identifier in the catalogue (`cannula list`).</summary>
        [CommandOption("--device <ID>")]
        [Description("Identifier in the catalogue (`cannula list`).")]
        public string? Device { get; init; }

        /// <summary>Outer diameter.</summary>
        [CommandOption("--french <FR>")]
        [Description("Outer diameter, French.")]
        public string? French { get; init; }

        /// <summary>Vessel it enters.</summary>
        [CommandOption("--route <ROUTE>")]
        [Description("Vessel it enters: jugular, femoralVein, femoralArtery, axillaryGraft or superficialFemoralArtery.")]
        public string? Route { get; init; }

        /// <summary>The patient's own side.</summary>
        [CommandOption("--side <SIDE>")]
        [Description("The patient's own side: right or left.")]
        public string? Side { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        if ((await visit.ReadAsync()).Course.CannulaeIn.Any(c => c.Name == settings.Cannula))
        {
            throw OptionText.Wrong("CANNULA", settings.Cannula, "a name that no lying cannula has", "Take another name, or write down first that the other was removed.", FaultCode.Contradiction);
        }

        return new CannulaPlaced
        {
            Cannula = settings.Cannula,
            Role = OptionText.Given<CannulaRole>(settings.Role, "--role"),
            Device = settings.Device,
            OuterDiameterFrench = OptionText.Number(settings.French, "--french", "Fr"),
            Route = OptionText.Maybe<AccessRoute>(settings.Route, "--route"),
            Side = OptionText.Maybe<BodySide>(settings.Side, "--side"),
            DepthCm = OptionText.Number(settings.Depth, "--depth", "cm"),
            TurnDeg = OptionText.Number(settings.Turn, "--turn", "degrees"),
            Remark = settings.Remark,
        };
    }
}
