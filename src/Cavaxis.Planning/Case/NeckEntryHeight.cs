namespace Cavaxis.Planning.Case;

/// <summary>Where on the neck the jugular vein is entered. A low entry shortens the way to the atrium by two to three centimetres.</summary>
public enum NeckEntryHeight
{
    /// <summary>Not decided or not said.</summary>
    Unknown,

    /// <summary>At the middle of the neck, near the apex of the triangle between the heads of the sternomastoid.</summary>
    MidNeck,

    /// <summary>Just above the clavicle.</summary>
    LowNeck,
}
