using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>What <c>image measure</c> takes.</summary>
public sealed class ImageMeasureSettings : CommandSettings
{
    /// <summary>The file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("A DICOM file.")]
    public required string Path { get; init; }

    /// <summary>Points.</summary>
    [CommandArgument(1, "[POINTS]")]
    [Description("Points as column,row in pixels from the top left (0,0), in the order that the measurement needs.")]
    public string[] Points { get; init; } = [];

    /// <summary>Frame.</summary>
    [CommandOption("--frame <N>")]
    [Description("Frame, from 1.")]
    [DefaultValue("1")]
    public required string Frame { get; init; }

    /// <summary>Straight distance.</summary>
    [CommandOption("--distance")]
    [Description("Distance between two points.")]
    public bool Distance { get; init; }

    /// <summary>Course.</summary>
    [CommandOption("--curve")]
    [Description("Length of the smooth course through two points or more.")]
    public bool Curve { get; init; }

    /// <summary>Area.</summary>
    [CommandOption("--area")]
    [Description("Area inside the smooth outline through three points or more.")]
    public bool Area { get; init; }

    /// <summary>Straight pieces.</summary>
    [CommandOption("--straight")]
    [Description("With --curve or --area: straight pieces between the points.")]
    public bool Straight { get; init; }

    /// <summary>Angle.</summary>
    [CommandOption("--angle")]
    [Description("Angle at the second of three points.")]
    public bool Angle { get; init; }

    /// <summary>Depth in a trace of motion.</summary>
    [CommandOption("--motion")]
    [Description("Depth between two points of a trace of motion over time.")]
    public bool Motion { get; init; }

    /// <summary>Diameter over the breath.</summary>
    [CommandOption("--breath")]
    [Description("Follow the two walls through the loop, from two points on the frame: widest, narrowest, collapsibility.")]
    public bool Breath { get; init; }

    /// <summary>Doppler flow.</summary>
    [CommandOption("--vti")]
    [Description("Trace a Doppler spectrum: integral, peak, mean, rate. Points, if any, are drawn over the trace from left to right.")]
    public bool Vti { get; init; }

    /// <summary>Known length.</summary>
    [CommandOption("--known-length-mm <MM>")]
    [Description("A length that you know, between the two points of --known; replaces the calibration of the file.")]
    public string? KnownLengthMm { get; init; }

    /// <summary>Its error.</summary>
    [CommandOption("--known-sd-mm <MM>")]
    [Description("Its standard deviation; 1 % of it when left out.")]
    public string? KnownSdMm { get; init; }

    /// <summary>Its ends.</summary>
    [CommandOption("--known <POINTS>")]
    [Description("The two ends of the known length: \"x,y x,y\", or given twice.")]
    public string[] Known { get; init; } = [];

    /// <summary>What it is.</summary>
    [CommandOption("--known-what <WORDS>")]
    [Description("What the known length is, such as two marks of the cannula.")]
    public string? KnownWhat { get; init; }

    /// <summary>Shrink confirmed.</summary>
    [CommandOption("--confirm-shrink <REGION=TIMES>")]
    [Description("Your decision about a region larger than the image: by how many times the image was shrunk since, such as 1=2.")]
    public string? ConfirmShrink { get; init; }

    /// <summary>Placing error.</summary>
    [CommandOption("--placement-px <PX>")]
    [Description("Standard deviation of a placed point, pixels; 1.5 when left out (common practice, no source).")]
    public string? PlacementPx { get; init; }

    /// <summary>Spectrum.</summary>
    [CommandOption("--region <N>")]
    [Description("With --vti: number of the region of the spectrum, from 1; needed where there are several.")]
    public string? Region { get; init; }

    /// <summary>Side of the flow.</summary>
    [CommandOption("--side <SIDE>")]
    [Description("With --vti: above or below the baseline; the side with more signal when left out.")]
    public string? Side { get; init; }

    /// <summary>Baseline.</summary>
    [CommandOption("--baseline <ROW>")]
    [Description("With --vti: row of the image at which the speed is zero; that of the file when left out.")]
    public string? Baseline { get; init; }

    /// <summary>Beats by hand.</summary>
    [CommandOption("--beat <FROM,TO>")]
    [Description("With --vti: begin and end of a beat, columns of the image; may be given several times. Found by the program when left out.")]
    public string[] Beats { get; init; } = [];

    /// <summary>Angle of the beam.</summary>
    [CommandOption("--beam-deg <DEG>")]
    [Description("With --vti: angle between beam and flow by which speeds are corrected, up to 60; not corrected when left out.")]
    public string? BeamDeg { get; init; }

    /// <summary>Its error.</summary>
    [CommandOption("--beam-sd-deg <DEG>")]
    [Description("Standard deviation of that angle; 5 when left out.")]
    public string? BeamSdDeg { get; init; }

    /// <summary>Outflow tract.</summary>
    [CommandOption("--lvot-mm <MM>")]
    [Description("With --vti: diameter of the outflow tract, for stroke volume and output.")]
    public string? LvotMm { get; init; }

    /// <summary>Its error.</summary>
    [CommandOption("--lvot-sd-mm <MM>")]
    [Description("Its standard deviation; 1 when left out.")]
    public string? LvotSdMm { get; init; }

    /// <summary>JSON instead of words.</summary>
    [CommandOption("--json")]
    [Description("Print JSON.")]
    public bool Json { get; init; }
}
