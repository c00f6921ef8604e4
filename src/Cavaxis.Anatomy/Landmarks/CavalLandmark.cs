namespace Cavaxis.Anatomy.Landmarks;

/// <summary>Named places along the axis.</summary>
public enum CavalLandmark
{
    /// <summary>Right jugular skin entry.</summary>
    RightNeckSkin,

    /// <summary>Left jugular skin entry, at its own way's length above the SCAJ.</summary>
    LeftNeckSkin,

    /// <summary>Where the brachiocephalic veins join to the SVC.</summary>
    BrachiocephalicConfluence,

    /// <summary>Superior cavo-atrial junction, the origin.</summary>
    Scaj,

    /// <summary>Level of the middle of the tricuspid annulus.</summary>
    TricuspidCentre,

    /// <summary>Inferior cavo-atrial junction.</summary>
    Icaj,

    /// <summary>Upper edge of the right hepatic vein.</summary>
    HepaticVein,

    /// <summary>Right renal vein.</summary>
    RenalVein,

    /// <summary>Where the common iliac veins join to the IVC.</summary>
    IliacConfluence,

    /// <summary>Right femoral skin entry.</summary>
    RightGroinSkin,

    /// <summary>Left femoral skin entry, at its own way's length below the ICAJ.</summary>
    LeftGroinSkin,
}
