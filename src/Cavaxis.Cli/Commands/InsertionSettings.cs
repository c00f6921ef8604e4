using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>insertion</c> takes.</summary>
public sealed class InsertionSettings : CatalogueSettings
{
    /// <summary>Path of the case file.</summary>
    [CommandArgument(0, "<CASE.json>")]
    [Description("The case file (docs/case-file.md).")]
    public required string CasePath { get; init; }

    /// <summary>Rank of the plan.</summary>
    [CommandOption("--plan <RANK>")]
    [Description("Rank of the plan whose cannulae are inserted [[1]].")]
    public string Plan { get; init; } = "1";

    /// <summary>Class of wire.</summary>
    [CommandOption("--wire <CLASS>")]
    [Description("Wire by the bending modulus of its body: floppy (2.5 to 9.5 GPa), standard (9.5 to 14.5), stiff (17 to 29) or extra-stiff (60 to 158) [[stiff]]. The word on a package does not tell it.")]
    public string Wire { get; init; } = "stiff";

    /// <summary>Number of anatomies.</summary>
    [CommandOption("--anatomies <COUNT>")]
    [Description("Number of sampled anatomies, 10 to 5000 [[200]].")]
    public string Anatomies { get; init; } = "200";

    /// <summary>Seed.</summary>
    [CommandOption("--seed <NUMBER>")]
    [Description("Seed of anatomies and unknowns [[1]]; the same seed gives the same result.")]
    public string Seed { get; init; } = "1";

    /// <summary>Where the drawing goes.</summary>
    [CommandOption("--drawing <FILE>")]
    [Description("Draw the paths: FILE.svg or FILE.png to scale from the front and from the left; FILE.glb (glTF, metres) or FILE.stl (mm) in three dimensions.")]
    public string? Drawing { get; init; }

    /// <summary>Leaves out what is tried otherwise.</summary>
    [CommandOption("--no-advice")]
    [Description("Leaves out trying other wires, a deeper wire and the other side, which takes as long as the rest.")]
    public bool NoAdvice { get; init; }
}
