namespace Cavaxis.Course.Events;

/// <summary>How a position was seen.</summary>
public enum PositionSight
{
    /// <summary>Depth mark at the skin only; shows nothing inside.</summary>
    SkinMark,

    /// <summary>Vascular ultrasound.</summary>
    VascularUltrasound,

    /// <summary>Transthoracic ultrasound.</summary>
    TransthoracicUltrasound,

    /// <summary>Transoesophageal ultrasound.</summary>
    TransoesophagealUltrasound,

    /// <summary>Fluoroscopy.</summary>
    Fluoroscopy,

    /// <summary>Plain film of chest or abdomen.</summary>
    PlainFilm,

    /// <summary>Computed tomography.</summary>
    ComputedTomography,

    /// <summary>Direct sight of the surgeon.</summary>
    DirectSight,
}
