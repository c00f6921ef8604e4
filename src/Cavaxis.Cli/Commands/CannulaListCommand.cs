using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>cannula list</c>.</summary>
/// <param name="output">Where results go.</param>
public sealed class CannulaListCommand(CommandOutput output) : Command<CatalogueSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, CatalogueSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        DeviceCatalogue catalogue = CatalogueLoader.Load(settings.Catalogues);
        if (settings.Json)
        {
            output.Json(catalogue.Cannulae.Select(CannulaRow.Of).ToArray());
            return (int)ExitCode.Done;
        }

        Table table = new Table().Border(TableBorder.Simple).AddColumns("id", "family", "Fr", "mm", "insertable cm", "numbers from");
        foreach (Cannula cannula in catalogue.Cannulae)
        {
            CannulaRow row = CannulaRow.Of(cannula);
            table.AddRow(
                Markup.Escape(row.Id),
                row.Family,
                row.OuterDiameterFrench.ToString("F0", CultureInfo.InvariantCulture),
                row.OuterDiameterMm.ToString("F1", CultureInfo.InvariantCulture),
                row.InsertableLengthCm.ToString("F0", CultureInfo.InvariantCulture),
                row.Certainty);
        }

        output.Console.Write(table);
        output.Wrapped(string.Empty, $"{catalogue.Cannulae.Count} generic cannulae described by numbers. Hole maps are editable defaults: enter those of the device in hand.");
        return (int)ExitCode.Done;
    }
}
