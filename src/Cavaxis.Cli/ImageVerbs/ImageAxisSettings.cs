using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image axis</c> takes.</summary>
public sealed class ImageAxisSettings : CommandSettings
{
    /// <summary>Folder of slices.</summary>
    [CommandArgument(0, "<FOLDER>")]
    [Description("A folder of slices of one series of computed tomography.")]
    public required string Folder { get; init; }

    /// <summary>Seeds.</summary>
    [CommandOption("--seed <X,Y,Z>")]
    [Description("A place inside of the veins, mm in the patient's coordinates (left, back, head). Two or more; none: the one bright column is looked for.")]
    public string[] Seeds { get; init; } = [];

    /// <summary>Places as voxels.</summary>
    [CommandOption("--voxels")]
    [Description("Seeds and confirmed places are column,row,slice from 0, slices in the order of the volume.")]
    public bool Voxels { get; init; }

    /// <summary>Confirmed landmarks.</summary>
    [CommandOption("--confirm <LANDMARK=X,Y,Z>")]
    [Description("A landmark that you have seen: brachiocephalicConfluence, scaj, icaj, hepaticVein, renalVein or iliacConfluence. A junction takes its edge behind @, such as scaj=1,2,3@appendageBorder.")]
    public string[] Confirm { get; init; } = [];

    /// <summary>Case to write into.</summary>
    [CommandOption("--case <CASE.json>")]
    [Description("A case whose axis gets the measurements; needs --out.")]
    public string? Case { get; init; }

    /// <summary>New case.</summary>
    [CommandOption("--out <NEW.json>")]
    [Description("The new case file.")]
    public string? Out { get; init; }

    /// <summary>Folder for pictures.</summary>
    [CommandOption("--pictures <FOLDER>")]
    [Description("A folder that gets pictures by which to judge the line: three planes, and the veins laid straight.")]
    public string? Pictures { get; init; }

    /// <summary>JSON instead of text.</summary>
    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }
}
