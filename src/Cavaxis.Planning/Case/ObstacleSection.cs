namespace Cavaxis.Planning.Case;

/// <summary>Things in the way of a wire or a cannula, or that change what support does.</summary>
public sealed record ObstacleSection
{
    /// <summary>Filter in the inferior caval vein.</summary>
    [Meaning("Filter in the inferior caval vein.")]
    public Finding CavalFilter { get; init; }

    /// <summary>Pacing or defibrillator leads.</summary>
    [Meaning("Pacing or defibrillator leads through the superior caval vein.")]
    public Finding PacingLeads { get; init; }

    /// <summary>Venous stent.</summary>
    [Meaning("Stent in a caval or iliac vein.")]
    public Finding VenousStent { get; init; }

    /// <summary>Open oval foramen.</summary>
    [Meaning("Open oval foramen or atrial septal defect.")]
    public Finding OpenOvalForamen { get; init; }

    /// <summary>Tricuspid prosthesis or ring.</summary>
    [Meaning("Tricuspid prosthesis, ring or clip.")]
    public Finding TricuspidProsthesis { get; init; }

    /// <summary>Thrombus in the right atrium or a caval vein.</summary>
    [Meaning("Thrombus in the right atrium or a caval vein.")]
    public Finding CentralThrombus { get; init; }

    /// <summary>Left ventricular thrombus.</summary>
    [Meaning("Thrombus in the left ventricle.")]
    public Finding LeftVentricularThrombus { get; init; }

    /// <summary>Aortic dissection.</summary>
    [Meaning("Aortic dissection.")]
    public Finding AorticDissection { get; init; }

    /// <summary>Aortic or iliac aneurysm or severe calcification.</summary>
    [Meaning("Aneurysm or severe calcification of the aorta or iliac arteries.")]
    public Finding AortoIliacDisease { get; init; }

    /// <summary>Disease of the right leg's arteries.</summary>
    [Meaning("Arterial disease of the right leg.")]
    public Finding RightLimbDisease { get; init; }

    /// <summary>Disease of the left leg's arteries.</summary>
    [Meaning("Arterial disease of the left leg.")]
    public Finding LeftLimbDisease { get; init; }

    /// <summary>Hostile right groin.</summary>
    [Meaning("Right groin hostile: scar, infection, haematoma, graft.")]
    public Finding HostileRightGroin { get; init; }

    /// <summary>Hostile left groin.</summary>
    [Meaning("Left groin hostile: scar, infection, haematoma, graft.")]
    public Finding HostileLeftGroin { get; init; }

    /// <summary>Hostile neck.</summary>
    [Meaning("Neck hostile: scar, infection, fixed, tracheostomy in the way.")]
    public Finding HostileNeck { get; init; }

    /// <summary>Raised abdominal pressure.</summary>
    [Meaning("Raised abdominal pressure, 12 mmHg or more.")]
    public Finding AbdominalHypertension { get; init; }
}
