using System.ComponentModel;
using System.Globalization;
using System.Text;
using Cavaxis.Cli.Output;
using Cavaxis.Devices.Bench;
using Cavaxis.Devices.Catalogue;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>cannula import</c>: a bench curve with water becomes a cannula of one's own.</summary>
/// <param name="output">Where results go.</param>
public sealed class CannulaImportCommand(CommandOutput output) : Command<CannulaImportCommand.Settings>
{
    /// <summary>What <c>cannula import</c> takes.</summary>
    public sealed class Settings : CommandSettings
    {
        /// <summary>The bench file.</summary>
        [CommandArgument(0, "<FILE.csv>")]
        [Description("Bench curve with water: flow and pressure drop with units in the header (docs/models/devices.md).")]
        public required string Path { get; init; }

        /// <summary>Where to save.</summary>
        [CommandOption("--save <CATALOGUE.json>")]
        [Description("Save the cannula in this catalogue of your own; an existing one is added to.")]
        public string? SavePath { get; init; }

        /// <summary>JSON instead of words.</summary>
        [CommandOption("--json")]
        [Description("Print JSON.")]
        public bool Json { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        BenchImport import = BenchCurveFile.Parse(
            CatalogueLoader.Text(settings.Path, BenchCurveFile.LongestText), DeviceCatalogue.BuiltIn);
        DeviceCatalogue own = new("own", [import.Cannula], [], [], []);
        if (settings.SavePath is string path)
        {
            DeviceCatalogue whole = File.Exists(path)
                ? CatalogueFile.Parse(CatalogueLoader.Text(path, CatalogueFile.LongestText)).With(own)
                : own;
            InputFile.WriteWhole(path, Encoding.UTF8.GetBytes(CatalogueFile.Write(whole)));
        }

        if (settings.Json)
        {
            output.Json(new ImportSheet(CannulaRow.Of(import.Cannula), import.Purpose, import.Points.Count, import.Curve, import.Quality, settings.SavePath));
            return (int)ExitCode.Done;
        }

        output.Wrapped(string.Empty, $"{import.Cannula.Id}: {import.Cannula.Description}");
        output.Wrapped(string.Empty, string.Create(
            CultureInfo.InvariantCulture,
            $"{import.Points.Count} points of the {import.Purpose} lumen fitted; scatter about the fit {import.Curve.RelativeSd * 100:F1} %; Reynolds numbers {import.Curve.LowestReynolds:F0} to {import.Curve.HighestReynolds:F0}."));
        output.Wrapped(string.Empty, "Carried over to blood by Reynolds similarity; outside that range the pressure is extrapolated and its spread widened.");
        output.Wrapped(string.Empty, settings.SavePath is null
            ? "Not saved. Add --save CATALOGUE.json to keep it, then plan with --catalogue CATALOGUE.json."
            : $"Saved in {settings.SavePath}. Plan with --catalogue {settings.SavePath}.");
        return (int)ExitCode.Done;
    }
}
