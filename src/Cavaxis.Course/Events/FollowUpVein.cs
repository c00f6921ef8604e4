namespace Cavaxis.Course.Events;

/// <summary>A vein that is looked at after removal.</summary>
public enum FollowUpVein
{
    /// <summary>Internal jugular vein.</summary>
    InternalJugular,

    /// <summary>Brachiocephalic vein.</summary>
    Brachiocephalic,

    /// <summary>Subclavian vein.</summary>
    Subclavian,

    /// <summary>Axillary vein.</summary>
    Axillary,

    /// <summary>Superior caval vein.</summary>
    SuperiorCaval,

    /// <summary>Inferior caval vein.</summary>
    InferiorCaval,

    /// <summary>Common iliac vein.</summary>
    CommonIliac,

    /// <summary>External iliac vein.</summary>
    ExternalIliac,

    /// <summary>Common femoral vein.</summary>
    CommonFemoral,

    /// <summary>Deep femoral vein.</summary>
    DeepFemoral,

    /// <summary>Femoral vein.</summary>
    Femoral,

    /// <summary>Popliteal vein.</summary>
    Popliteal,
}
