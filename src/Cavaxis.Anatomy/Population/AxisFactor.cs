namespace Cavaxis.Anatomy.Population;

/// <summary>Unseen causes that several dimensions share after height, surface, sex and age are taken out.</summary>
public enum AxisFactor
{
    /// <summary>Build beyond what height and weight tell.</summary>
    BodySize,

    /// <summary>Filling of the great and access veins.</summary>
    VenousFilling,

    /// <summary>Calibre of the arteries.</summary>
    ArterialCalibre,

    /// <summary>Size of the right heart.</summary>
    HeartSize,

    /// <summary>Length of neck and upper chest; the way from the neck contains the SVC.</summary>
    ThoracicLength,

    /// <summary>Length of the belly; the way from the groin contains the IVC.</summary>
    AbdominalLength,

    /// <summary>Both jugular veins.</summary>
    JugularPair,

    /// <summary>Both femoral veins.</summary>
    FemoralVeinPair,

    /// <summary>Both femoral arteries.</summary>
    FemoralArteryPair,

    /// <summary>Both axillary arteries.</summary>
    AxillaryArteryPair,
}
