using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>calibrate</c> takes, and <c>whatif</c> with it.</summary>
public class CalibrationSettings : CatalogueSettings
{
    /// <summary>The case file.</summary>
    [CommandArgument(0, "<CASE.json>")]
    [Description("The case file with its observations (docs/case-file.md).")]
    public required string CasePath { get; init; }

    /// <summary>Members.</summary>
    [CommandOption("--members <COUNT>")]
    [Description("Members of the ensemble that the spread stands on, 8 to 2000 [[40]].")]
    public string Members { get; init; } = "40";

    /// <summary>Seed.</summary>
    [CommandOption("--seed <NUMBER>")]
    [Description("Seed of the ensemble [[1]]; the same seed gives the same result.")]
    public string Seed { get; init; } = "1";
}
