using System.ComponentModel;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.GasExchange;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course recirculation</c>: recirculation from the last readings by saturation and content, and by dilution where areas are given.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CourseRecirculationCommand(CommandOutput output, SecretReader secrets) : CourseCommand<CourseRecirculationCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course recirculation</c> takes.</summary>
    public sealed class Settings : OnePatientSettings
    {
        /// <summary>Where the venous sample was drawn.</summary>
        [CommandOption("--venous <SITE>")]
        [Description("Where the venous sample was drawn: upperCava, pulmonaryArtery or drainageWithSweepOff [[upperCava, or else pulmonaryArtery]].")]
        public string? Venous { get; init; }

        /// <summary>Saturation of the venous sample.</summary>
        [CommandOption("--venous-saturation <PERCENT>")]
        [Description("Saturation of the venous sample, %, where it does not stand in the record, as 62±2; needed with drainageWithSweepOff.")]
        public string? VenousSaturation { get; init; }

        /// <summary>Areas of an injection.</summary>
        [CommandOption("--injection <FIRST/SECOND>")]
        [Description("Areas of one injection of indicator, first pass on the return side and second on the drainage side in the same unit, as 12.0±0.3/2.1±0.2; may be given several times.")]
        public string[] Injections { get; init; } = [];
    }

    private protected override Shown Show(CourseReading reading, Settings settings, DateTimeOffset now)
    {
        VenousSite? site = OptionText.Maybe<VenousSite>(settings.Venous, "--venous");
        Estimate? venous = settings.VenousSaturation is null ? null : Percent(settings.VenousSaturation);
        ReadingsAtHand? readings = ReadingsAtHand.Of(reading.Course, now);
        return RecirculationSheet.Of(
            readings is null ? null : RunningRecirculation.Of(readings, site, venous),
            settings.Injections.Length == 0 ? null : DilutionRecirculation.Of([.. settings.Injections.Select(Injection)]));
    }

    // Without an error of its own the sample errs as the usual reading of the upper cava does.
    private static Estimate Percent(string text)
    {
        (double value, double? sd) = OptionText.Pair(text, "--venous-saturation", "%");
        return value is >= 0 and <= 100
            ? Estimate.Normal(value, sd ?? Course.Observations.QuantityTable.Of(Course.Observations.ObservedQuantity.CentralVenousSaturationPercent).UsualSd, Origin.Measured)
            : throw OptionText.Wrong("--venous-saturation", text, "0 to 100 %", "Give the saturation in percent, 62 and not 0.62.", FaultCode.OutOfRange);
    }

    private static DilutionInjection Injection(string text)
    {
        string[] parts = text.Split('/');
        return parts.Length == 2
            ? new DilutionInjection(OptionText.WithError(parts[0], "--injection", "any unit of area"), OptionText.WithError(parts[1], "--injection", "any unit of area"))
            : throw OptionText.Wrong("--injection", text, "FIRST/SECOND", "Write it such as 12.0/2.1.");
    }
}
