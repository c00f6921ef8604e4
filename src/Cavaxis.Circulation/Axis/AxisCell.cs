namespace Cavaxis.Circulation.Axis;

/// <summary>The parts into which the cavo-atrial axis is cut for the mixing of blood.</summary>
public enum AxisCell
{
    /// <summary>Upper half of the superior cava, with the brachiocephalic inflow.</summary>
    UpperSuperiorCava,

    /// <summary>Lower half of the superior cava, with the azygos inflow.</summary>
    LowerSuperiorCava,

    /// <summary>Atrium below the mouth of the superior cava.</summary>
    UpperAtrium,

    /// <summary>Middle of the atrium, on the axis.</summary>
    MiddleAtrium,

    /// <summary>Beside the axis, before the tricuspid valve: all blood for the right ventricle passes here.</summary>
    Vestibule,

    /// <summary>Atrium above the mouth of the inferior cava, with the coronary sinus.</summary>
    LowerAtrium,

    /// <summary>Inferior cava between hepatic veins and atrium.</summary>
    ThoracicCava,

    /// <summary>Inferior cava behind the liver, with the hepatic veins.</summary>
    HepaticCava,

    /// <summary>Inferior cava at the renal veins.</summary>
    RenalCava,

    /// <summary>Inferior cava above the iliac confluence, with the iliac inflow.</summary>
    LowerCava,
}
