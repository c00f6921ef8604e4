using System.ComponentModel;
using Cavaxis.Cli.Commands;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image tip</c> takes.</summary>
public sealed class ImageTipSettings : CatalogueSettings
{
    /// <summary>Case.</summary>
    [CommandArgument(0, "<CASE>")]
    [Description("Case file of the patient, for the anatomy.")]
    public required string CasePath { get; init; }

    /// <summary>Device.</summary>
    [CommandOption("--device <ID>")]
    [Description("Identifier of the cannula.")]
    public string? Device { get; init; }

    /// <summary>Part seen.</summary>
    [CommandOption("--seen <PART>")]
    [Description("What was seen: tip, first hole, wire, or the name of a group of holes such as return port.")]
    public string? Seen { get; init; }

    /// <summary>Part of the group.</summary>
    [CommandOption("--hole <WHICH>")]
    [Description("Of a group of holes: middle, nearestHub or nearestTip.")]
    [DefaultValue("middle")]
    public required string Hole { get; init; }

    /// <summary>Wire beyond the tip.</summary>
    [CommandOption("--wire-beyond-mm <MM>")]
    [Description("With --seen wire: how far the wire reaches beyond the tip.")]
    public string? WireBeyondMm { get; init; }

    /// <summary>Its error.</summary>
    [CommandOption("--wire-sd-mm <MM>")]
    [Description("Its standard deviation; 5 when left out.")]
    public string? WireSdMm { get; init; }

    /// <summary>Landmark.</summary>
    [CommandOption("--landmark <NAME>")]
    [Description("Landmark on the same picture: scaj, icaj, tricuspidCentre, hepaticVein, renalVein, brachiocephalicConfluence or iliacConfluence.")]
    public string? Landmark { get; init; }

    /// <summary>Side.</summary>
    [CommandOption("--side <SIDE>")]
    [Description("On which side of the landmark the part lies: feet or head.")]
    public string? Side { get; init; }

    /// <summary>Distance.</summary>
    [CommandOption("--distance-mm <MM>")]
    [Description("Distance from the landmark to the part on the picture.")]
    public string? DistanceMm { get; init; }

    /// <summary>Its error.</summary>
    [CommandOption("--distance-sd-mm <MM>")]
    [Description("Its standard deviation; 3 when left out.")]
    public string? DistanceSdMm { get; init; }

    /// <summary>Along the vein.</summary>
    [CommandOption("--along-vein")]
    [Description("The distance was measured along the vein, not in a straight line.")]
    public bool AlongVein { get; init; }

    /// <summary>Tilt.</summary>
    [CommandOption("--tilt-deg <DEG>")]
    [Description("How far the line measured leans out of the plane of the picture; 0 when left out.")]
    public string? TiltDeg { get; init; }

    /// <summary>Its spread.</summary>
    [CommandOption("--tilt-sd-deg <DEG>")]
    [Description("Its spread; 12 when left out (assumption).")]
    public string? TiltSdDeg { get; init; }

    /// <summary>Edge.</summary>
    [CommandOption("--edge <EDGE>")]
    [Description("Edge taken as the junction: appendageBorder, cristaTerminalis, firstAtrialSlice, eustachianRim or myocardialEdge.")]
    [DefaultValue("unknown")]
    public required string Edge { get; init; }

    /// <summary>Entry.</summary>
    [CommandOption("--entry <SITE>")]
    [Description("Where the device enters: rightNeck, leftNeck, rightGroin or leftGroin.")]
    public string? Entry { get; init; }

    /// <summary>Course.</summary>
    [CommandOption("--course <WAY>")]
    [Description("Way of the device through the atrium: unknown, straight, alongAxis or alongWall.")]
    [DefaultValue("unknown")]
    public required string Course { get; init; }

    /// <summary>Depth at the skin.</summary>
    [CommandOption("--depth-mm <MM>")]
    [Description("Depth of the tip from the skin by the marks, for comparison.")]
    public string? DepthMm { get; init; }

    /// <summary>Anatomies.</summary>
    [CommandOption("--anatomies <N>")]
    [Description("How many anatomies are drawn, up to 20000.")]
    [DefaultValue("4000")]
    public required string Anatomies { get; init; }

    /// <summary>Seed.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed, from 1; the same seed gives the same answer.")]
    [DefaultValue("1")]
    public required string Seed { get; init; }
}
