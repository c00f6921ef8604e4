using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>plan</c> takes.</summary>
public sealed class PlanSettings : CatalogueSettings
{
    /// <summary>The case file.</summary>
    [CommandArgument(0, "<CASE.json>")]
    [Description("The case file (docs/case-file.md).")]
    public required string CasePath { get; init; }

    /// <summary>Report file.</summary>
    [CommandOption("--report <FILE>")]
    [Description("Write a report: FILE.html or FILE.pdf.")]
    public string? ReportPath { get; init; }

    /// <summary>Number of anatomies.</summary>
    [CommandOption("--anatomies <COUNT>")]
    [Description("Number of sampled anatomies, 200 to 200000 [[10000]].")]
    public string Anatomies { get; init; } = "10000";

    /// <summary>Seed.</summary>
    [CommandOption("--seed <NUMBER>")]
    [Description("Seed of the anatomies [[1]]; the same seed gives the same result.")]
    public string Seed { get; init; } = "1";

    /// <summary>Weights.</summary>
    [CommandOption("--weights <NAME=VALUE,...>")]
    [Description("Weights of the ranking criteria that replace the rule book's, e.g. fit=6,punctures=0.")]
    public string? Weights { get; init; }

    /// <summary>Chosen plan.</summary>
    [CommandOption("--plan <RANK>")]
    [Description("Rank of the plan that steps and next measurements are shown for [[1]].")]
    public string Plan { get; init; } = "1";

    /// <summary>Rule book.</summary>
    [CommandOption("--rules <FILE>")]
    [Description("A rule book of your programme instead of the built-in one.")]
    public string? Rules { get; init; }

    /// <summary>Leaves the circulation out.</summary>
    [CommandOption("--quick")]
    [Description("Leaves out the model of the circulation (recirculation, loading of the left ventricle), which takes most of the time.")]
    public bool Quick { get; init; }

    /// <summary>Tries wire and cannulae of every plan.</summary>
    [CommandOption("--insertion <COUNT>")]
    [Description("Try wire and cannulae of every plan in so many sampled curved anatomies, 10 to 1000: share in which each goes in as it should, and predicted pitfalls at their steps. Takes about 10 s for each different cannula in 50.")]
    public string? Insertion { get; init; }

    /// <summary>The arterial tree of every plan that returns to an artery.</summary>
    [CommandOption("--arteries")]
    [Description("Compute the arterial tree of every plan that returns to an artery: where blood of heart and pump meet, oxygen at heart and right hand, and whether the leg below the cannula is supplied. Takes seconds for each.")]
    public bool Arteries { get; init; }
}
