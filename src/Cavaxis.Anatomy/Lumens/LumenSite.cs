namespace Cavaxis.Anatomy.Lumens;

/// <summary>Named places in which the tip of a wire or a cannula may lie.</summary>
public enum LumenSite
{
    /// <summary>In the tissue, outside of every part.</summary>
    Outside,

    /// <summary>Between the skin of the neck and the SVC: jugular and brachiocephalic vein.</summary>
    NeckVein,

    /// <summary>Upper half of the SVC.</summary>
    UpperSvc,

    /// <summary>Lower half of the SVC.</summary>
    LowerSvc,

    /// <summary>Azygos vein.</summary>
    Azygos,

    /// <summary>Right atrium.</summary>
    RightAtrium,

    /// <summary>Appendage of the right atrium.</summary>
    Appendage,

    /// <summary>Right ventricle, beyond the tricuspid annulus.</summary>
    RightVentricle,

    /// <summary>IVC between atrium and hepatic veins.</summary>
    SuprahepaticIvc,

    /// <summary>Right hepatic vein.</summary>
    HepaticVein,

    /// <summary>IVC below the hepatic veins down to the renal veins.</summary>
    InfrahepaticIvc,

    /// <summary>IVC below the renal veins.</summary>
    InfrarenalIvc,

    /// <summary>Renal vein.</summary>
    RenalVein,

    /// <summary>Iliac or femoral vein.</summary>
    IliofemoralVein,
}
