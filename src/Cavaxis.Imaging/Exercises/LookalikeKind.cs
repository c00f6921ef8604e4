namespace Cavaxis.Imaging.Exercises;

/// <summary>What can be taken for the tip of a cannula.</summary>
public enum LookalikeKind
{
    /// <summary>A group of side holes: the wall has gaps, and the last piece before a gap looks like an end.</summary>
    HoleGroup,

    /// <summary>The end of the introducer, beyond the cannula.</summary>
    IntroducerEnd,

    /// <summary>The end of the wire.</summary>
    WireEnd,

    /// <summary>An echo thrown to and fro between the walls.</summary>
    Reverberation,

    /// <summary>The edge of the shadow below the end.</summary>
    ShadowEdge,

    /// <summary>Where the cannula leaves the slice, cut by the plane.</summary>
    CutEnd,

    /// <summary>Where the cannula leaves the picture.</summary>
    PictureEdge,

    /// <summary>Where the winding in the wall ends, short of the tip.</summary>
    WindingEnd,
}
