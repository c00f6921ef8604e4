namespace Cavaxis.Anatomy.Axis;

/// <summary>How high on the neck the skin is entered. It moves the depth of every jugular landmark by
/// centimetres.</summary>
public enum NeckEntry
{
    /// <summary>Not said: an even mixture of the two heights, with the mixture's mean and its wider spread.</summary>
    Unknown,

    /// <summary>At the middle of the neck, about the level of the cricoid cartilage.</summary>
    MidNeck,

    /// <summary>Just above the clavicle: 25 mm nearer to the heart in an adult.</summary>
    LowNeck,
}
