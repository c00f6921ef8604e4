namespace Cavaxis.Arteries.Scaling;

/// <summary>Arteries by which a pump returns, and whose diameter a vessel survey measures.</summary>
public enum AccessArtery
{
    /// <summary>Right common femoral artery.</summary>
    FemoralRight,

    /// <summary>Left common femoral artery.</summary>
    FemoralLeft,

    /// <summary>Right axillary artery.</summary>
    AxillaryRight,

    /// <summary>Left axillary artery.</summary>
    AxillaryLeft,
}
