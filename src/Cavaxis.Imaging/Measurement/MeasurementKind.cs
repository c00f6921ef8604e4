namespace Cavaxis.Imaging.Measurement;

/// <summary>What was measured on an image.</summary>
public enum MeasurementKind
{
    /// <summary>Straight distance between two points.</summary>
    Distance,

    /// <summary>Length of a course through points.</summary>
    CurvedDistance,

    /// <summary>Area inside an outline.</summary>
    Area,

    /// <summary>Angle between two lines that meet in a point.</summary>
    Angle,

    /// <summary>Depth between two points of a trace of motion over time.</summary>
    MotionDepth,

    /// <summary>Velocity-time integral of a Doppler envelope.</summary>
    VelocityTimeIntegral,

    /// <summary>Highest speed of a Doppler envelope.</summary>
    PeakVelocity,

    /// <summary>Mean speed of a Doppler envelope over a beat.</summary>
    MeanVelocity,

    /// <summary>Rate of the beats seen in a Doppler envelope.</summary>
    BeatRate,

    /// <summary>Volume of a beat: integral times area of the outflow tract.</summary>
    StrokeVolume,

    /// <summary>Stroke volume times rate.</summary>
    Output,
}
