namespace Cavaxis.Web.Pages.Images;

/// <summary>What is measured by pointing.</summary>
public enum MeasureTool
{
    /// <summary>Straight distance between two points.</summary>
    Distance,

    /// <summary>Length of a course through points.</summary>
    Course,

    /// <summary>Area inside an outline.</summary>
    Area,

    /// <summary>Angle at the second of three points.</summary>
    Angle,

    /// <summary>A diameter that changes over the frames of a loop.</summary>
    Breath,

    /// <summary>The envelope of a Doppler spectrum.</summary>
    Spectrum,

    /// <summary>A length that is known, by which the picture is measured instead of by its file.</summary>
    KnownLength,
}
