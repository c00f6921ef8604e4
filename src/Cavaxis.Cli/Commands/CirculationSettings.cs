using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>circulation</c> takes.</summary>
public sealed class CirculationSettings : CatalogueSettings
{
    /// <summary>The case file; left out only with <c>--parameters</c>.</summary>
    [CommandArgument(0, "[CASE.json]")]
    [Description("The case file (docs/case-file.md).")]
    public string? CasePath { get; init; }

    /// <summary>Changes.</summary>
    [CommandOption("--set <NAME=VALUE>")]
    [Description("Change a number of the model: flow=4.5 sets, bloodVolumeMl=+500 adds in its unit, contractility=80% or x0.8 multiplies, peep=-20% changes by a share; may be given several times.")]
    public string[] Changes { get; init; } = [];

    /// <summary>Length of a run over time.</summary>
    [CommandOption("--seconds <NUMBER>")]
    [Description("Also compute this long over time, from the moment of the changes on, 1 to 3600 s.")]
    public string? Seconds { get; init; }

    /// <summary>Picture file.</summary>
    [CommandOption("--plot <FILE>")]
    [Description("Draw pressures, loops, flows and recirculation: FILE.svg or FILE.png.")]
    public string? PlotPath { get; init; }

    /// <summary>Fit first.</summary>
    [CommandOption("--fitted")]
    [Description("Fit the numbers to the readings of the case first, as calibrate does.")]
    public bool Fitted { get; init; }

    /// <summary>List the numbers of the model.</summary>
    [CommandOption("--parameters")]
    [Description("List every number of the model with its value, range and source, and compute nothing.")]
    public bool Parameters { get; init; }
}
