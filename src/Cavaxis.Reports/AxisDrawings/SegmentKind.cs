namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Which part of the trunk a segment is; it sets the shape drawn.</summary>
public enum SegmentKind
{
    /// <summary>Superior vena cava.</summary>
    SuperiorVenaCava,

    /// <summary>Right atrium, between the two mouths.</summary>
    RightAtrium,

    /// <summary>Inferior vena cava or a stretch of it.</summary>
    InferiorVenaCava,
}
