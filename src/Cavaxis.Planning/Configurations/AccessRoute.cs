namespace Cavaxis.Planning.Configurations;

/// <summary>The vessel through which a cannula enters.</summary>
public enum AccessRoute
{
    /// <summary>Internal jugular vein.</summary>
    Jugular,

    /// <summary>Common femoral vein.</summary>
    FemoralVein,

    /// <summary>Common femoral artery.</summary>
    FemoralArtery,

    /// <summary>Axillary artery with a graft sewn to it.</summary>
    AxillaryGraft,

    /// <summary>Superficial femoral artery, towards the foot.</summary>
    SuperficialFemoralArtery,
}
