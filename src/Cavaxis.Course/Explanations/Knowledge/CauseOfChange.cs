namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>What can lie behind a change on support.</summary>
public enum CauseOfChange
{
    /// <summary>Nothing beyond noise and the usual drift.</summary>
    NothingChanged,

    /// <summary>Returned blood is drained again.</summary>
    Recirculation,

    /// <summary>Too little blood in the veins.</summary>
    Hypovolaemia,

    /// <summary>The drainage cannula is kinked or lies badly and sucks at the wall.</summary>
    DrainageObstruction,

    /// <summary>Clot or kink in the membrane lung or behind it.</summary>
    ReturnObstruction,

    /// <summary>Raised pressure in the abdomen.</summary>
    AbdominalPressure,

    /// <summary>Raised pressure in the chest: tamponade or tension pneumothorax.</summary>
    ThoracicPressure,

    /// <summary>Greater need of oxygen and greater output: sepsis, fever, waking.</summary>
    HighDemand,

    /// <summary>The patient's own lungs have become worse.</summary>
    WorseLungs,

    /// <summary>The membrane lung exchanges less gas.</summary>
    FailingMembrane,

    /// <summary>The left ventricle is distended against the flow of the pump, and still ejects.</summary>
    DistendedVentricle,

    /// <summary>The aortic valve no longer opens.</summary>
    ClosedAorticValve,

    /// <summary>The recovering heart sends blood from poor lungs to heart and head.</summary>
    DifferentialHypoxaemia,

    /// <summary>The leg behind the arterial cannula gets too little blood.</summary>
    LimbIschaemia,
}
