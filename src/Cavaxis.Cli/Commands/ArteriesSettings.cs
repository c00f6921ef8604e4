using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>arteries</c> takes.</summary>
public sealed class ArteriesSettings : CatalogueSettings
{
    /// <summary>Path of the case file.</summary>
    [CommandArgument(0, "<CASE.json>")]
    [Description("The case file (docs/case-file.md).")]
    public required string CasePath { get; init; }

    /// <summary>Pump flow.</summary>
    [CommandOption("--flow <L/MIN>")]
    [Description("Pump flow instead of that of the case or plan, 0 to 8 L/min; may be given several times: the first is told in full, all in a table.")]
    public string[] Flows { get; init; } = [];

    /// <summary>Strength of the heart.</summary>
    [CommandOption("--strength <FACTOR>")]
    [Description("Strength of the left ventricle as a factor on that of the case, 0 to 5; may be given several times: each with each flow, in a table.")]
    public string[] Strengths { get; init; } = [];

    /// <summary>Changes.</summary>
    [CommandOption("--set <NAME=VALUE>")]
    [Description("Change a number of the circulation, as in circulation: resistance=80%, shunt=0.3, balloon=40; may be given several times.")]
    public string[] Changes { get; init; } = [];

    /// <summary>Rank of the plan.</summary>
    [CommandOption("--plan <RANK>")]
    [Description("Rank of the plan that is connected where no support runs [[the first that returns to an artery]].")]
    public string? Plan { get; init; }

    /// <summary>Fit first.</summary>
    [CommandOption("--fitted")]
    [Description("Fit the circulation of support that runs to the readings of the case first, as calibrate does.")]
    public bool Fitted { get; init; }

    /// <summary>Where the drawing goes.</summary>
    [CommandOption("--drawing <FILE>")]
    [Description("Draw the tree, coloured by oxygen and with numbers at the named arteries: FILE.svg or FILE.png.")]
    public string? Drawing { get; init; }
}
