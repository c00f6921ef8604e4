namespace Cavaxis.Course.Events;

/// <summary>How a cannula was taken out.</summary>
public enum RemovalMethod
{
    /// <summary>Pulled and compressed.</summary>
    PulledAndCompressed,

    /// <summary>Pulled with a suture of the skin.</summary>
    SkinSuture,

    /// <summary>With a closure device.</summary>
    ClosureDevice,

    /// <summary>With surgical repair of the vessel.</summary>
    SurgicalRepair,

    /// <summary>It came out unintended.</summary>
    FellOut,

    /// <summary>Otherwise, told in the remark.</summary>
    Other,
}
