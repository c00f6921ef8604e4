namespace Cavaxis.Anatomy.Lumens;

/// <summary>Skin entries to the great veins.</summary>
public enum SkinSite
{
    /// <summary>Right internal jugular vein.</summary>
    RightNeck,

    /// <summary>Left internal jugular vein.</summary>
    LeftNeck,

    /// <summary>Right common femoral vein.</summary>
    RightGroin,

    /// <summary>Left common femoral vein.</summary>
    LeftGroin,
}
