namespace Cavaxis.Imaging.Tips;

/// <summary>Stretches of the caval axis, from the head down.</summary>
public enum AxisZone
{
    /// <summary>Above the confluence of the brachiocephalic veins.</summary>
    NeckVein,

    /// <summary>Upper half of the SVC.</summary>
    UpperSvc,

    /// <summary>Lower half of the SVC.</summary>
    LowerSvc,

    /// <summary>Right atrium above the level of the middle of the tricuspid annulus.</summary>
    UpperAtrium,

    /// <summary>Right atrium below that level.</summary>
    LowerAtrium,

    /// <summary>IVC between atrium and hepatic veins.</summary>
    SuprahepaticIvc,

    /// <summary>IVC from the hepatic veins to the renal veins.</summary>
    InfrahepaticIvc,

    /// <summary>IVC below the renal veins.</summary>
    InfrarenalIvc,

    /// <summary>Iliac or femoral vein.</summary>
    IliofemoralVein,
}
