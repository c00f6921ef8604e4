namespace Cavaxis.Imaging.Calibration;

/// <summary>Whether a region can be measured in.</summary>
public enum RegionState
{
    /// <summary>As stated.</summary>
    Sound,

    /// <summary>Cut to the image by one pixel; steps as stated.</summary>
    Cut,

    /// <summary>Not before a person has decided what its scale is.</summary>
    NeedsDecision,

    /// <summary>By what a person decided.</summary>
    Confirmed,

    /// <summary>Not at all.</summary>
    Unusable,
}
