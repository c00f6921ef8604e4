namespace Cavaxis.Anatomy.Conditioning;

/// <summary>Lengths that people measure in one go and that are sums of dimensions of the axis, mm.</summary>
public enum DerivedLength
{
    /// <summary>Left jugular skin entry to SCAJ along the veins.</summary>
    LeftNeckSkinToScaj,

    /// <summary>Right jugular skin entry to ICAJ, straight through the atrium.</summary>
    RightNeckSkinToIcaj,

    /// <summary>Right femoral skin entry to SCAJ, straight through the atrium.</summary>
    RightGroinSkinToScaj,

    /// <summary>Left femoral skin entry to ICAJ along the veins.</summary>
    LeftGroinSkinToIcaj,

    /// <summary>Left femoral skin entry to SCAJ, straight through the atrium.</summary>
    LeftGroinSkinToScaj,

    /// <summary>SCAJ to the upper edge of the right hepatic vein.</summary>
    ScajToHepaticVein,

    /// <summary>Upper edge of the right hepatic vein to the right renal vein.</summary>
    HepaticVeinToRenalVein,

    /// <summary>Iliac confluence to ICAJ: the whole inferior caval vein.</summary>
    InferiorVenaCavaLength,

    /// <summary>Right femoral skin entry to the right renal vein.</summary>
    RightGroinSkinToRenalVein,

    /// <summary>Right femoral skin entry to the iliac confluence.</summary>
    RightGroinSkinToIliacConfluence,
}
