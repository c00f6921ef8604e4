namespace Cavaxis.Imaging.Calibration;

/// <summary>Where the scale of a measurement comes from.</summary>
public enum ScaleOrigin
{
    /// <summary>The region that the file states.</summary>
    Region,

    /// <summary>The region that the file states, scaled by what a person decided.</summary>
    ConfirmedRegion,

    /// <summary>A length on the picture that a person knows.</summary>
    KnownLength,
}
