namespace Cavaxis.Imaging.Tomography;

/// <summary>Where a landmark on the centreline comes from.</summary>
public enum LandmarkOrigin
{
    /// <summary>Not found, and not confirmed.</summary>
    NotFound,

    /// <summary>Proposed by the program from the calibre: to be looked at.</summary>
    Proposed,

    /// <summary>Pointed out by a person.</summary>
    Confirmed,
}
