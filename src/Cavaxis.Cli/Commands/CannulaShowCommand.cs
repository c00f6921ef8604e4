using System.ComponentModel;
using System.Globalization;
using Cavaxis.Blood.Rheology;
using Cavaxis.Cli.Output;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Json;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>cannula show</c>: geometry, hole groups and pressure over flow in blood.</summary>
/// <param name="output">Where results go.</param>
public sealed class CannulaShowCommand(CommandOutput output) : Command<CannulaShowCommand.Settings>
{
    private const double Haematocrit = 0.30;
    private const double TemperatureC = 37;

    /// <summary>What <c>cannula show</c> takes.</summary>
    public sealed class Settings : CatalogueSettings
    {
        /// <summary>Identifier.</summary>
        [CommandArgument(0, "<ID>")]
        [Description("Identifier of the cannula.")]
        public required string Id { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Cannula cannula = CatalogueLoader.Load(settings.Catalogues).Cannula(settings.Id);
        Fluid blood = new(
            BloodDensity.KgPerM3(Haematocrit, TemperatureC), BloodViscosity.PascalSeconds(Haematocrit, TemperatureC));
        LumenSheet[] sheets = [.. cannula.Lumens.Select(lumen => LumenSheet.Of(cannula, lumen, blood))];
        if (settings.Json)
        {
            output.Json(new CannulaSheet(
                CannulaRow.Of(cannula), cannula.GeometrySource, cannula.LargestWireMm, cannula.DepthMarksEveryMm, cannula.BendingStiffnessNMm2, sheets));
            return (int)ExitCode.Done;
        }

        output.Wrapped(string.Empty, $"{cannula.Id}: {cannula.Description}");
        output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"{cannula.OuterDiameterFrench:F0} Fr ({cannula.OuterDiameterMm:F1} mm), insertable {cannula.InsertableLengthMm / 10:F0} cm. Numbers: {cannula.GeometrySource}"));
        foreach (LumenSheet sheet in sheets)
        {
            WriteLumen(sheet);
        }

        output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"Pressures: calculated for blood of haematocrit {Haematocrit * 100:F0} % at {TemperatureC:F0} °C; ± is one standard deviation."));
        return (int)ExitCode.Done;
    }

    private void WriteLumen(LumenSheet sheet)
    {
        output.Line();
        output.Line($"{sheet.Purpose} lumen");
        Table holes = new Table().Border(TableBorder.Simple).AddColumns("holes", "cm from tip", "over cm", "number", "mm each", "facing");
        foreach (HoleGroup group in sheet.HoleGroups)
        {
            holes.AddRow(
                Markup.Escape(group.Name),
                (group.FromTipMm / 10).ToString("F1", CultureInfo.InvariantCulture),
                (group.SpanMm / 10).ToString("F1", CultureInfo.InvariantCulture),
                group.Count.ToString(CultureInfo.InvariantCulture),
                group.DiameterMm.ToString("F1", CultureInfo.InvariantCulture),
                JsonName.Of(group.Facing.ToString()));
        }

        output.Console.Write(holes);
        Table flows = new Table().Border(TableBorder.Simple).AddColumns("flow L/min", "pressure drop mmHg", "share of each hole group, in the order above");
        foreach (LumenPoint point in sheet.Points)
        {
            flows.AddRow(
                point.FlowLPerMin.ToString("F1", CultureInfo.InvariantCulture),
                string.Create(CultureInfo.InvariantCulture, $"{point.PressureDropMmHg.Value:F0} ± {point.PressureDropMmHg.Sd:F0}"),
                string.Join(" / ", point.HoleShares.Select(share => string.Create(CultureInfo.InvariantCulture, $"{share * 100:F0} %"))));
        }

        output.Console.Write(flows);
    }
}
