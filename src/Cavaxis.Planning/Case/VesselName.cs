namespace Cavaxis.Planning.Case;

/// <summary>Access vessels that a survey can describe.</summary>
public enum VesselName
{
    /// <summary>Internal jugular vein.</summary>
    InternalJugularVein,

    /// <summary>Common femoral vein.</summary>
    CommonFemoralVein,

    /// <summary>Common femoral artery.</summary>
    CommonFemoralArtery,

    /// <summary>Superficial femoral artery, for a distal perfusion cannula.</summary>
    SuperficialFemoralArtery,

    /// <summary>Axillary artery.</summary>
    AxillaryArtery,

    /// <summary>Common carotid artery, in small children.</summary>
    CommonCarotidArtery,
}
