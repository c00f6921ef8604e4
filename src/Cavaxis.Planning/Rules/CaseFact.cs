namespace Cavaxis.Planning.Rules;

/// <summary>Facts of a case that a finding rule can ask for; each names one field of the case file.</summary>
public enum CaseFact
{
    /// <summary>obstacles.cavalFilter</summary>
    CavalFilter,

    /// <summary>obstacles.pacingLeads</summary>
    PacingLeads,

    /// <summary>obstacles.venousStent</summary>
    VenousStent,

    /// <summary>obstacles.openOvalForamen</summary>
    OpenOvalForamen,

    /// <summary>obstacles.tricuspidProsthesis</summary>
    TricuspidProsthesis,

    /// <summary>obstacles.centralThrombus</summary>
    CentralThrombus,

    /// <summary>obstacles.leftVentricularThrombus</summary>
    LeftVentricularThrombus,

    /// <summary>obstacles.aorticDissection</summary>
    AorticDissection,

    /// <summary>obstacles.aortoIliacDisease</summary>
    AortoIliacDisease,

    /// <summary>obstacles.rightLimbDisease or leftLimbDisease, of the side of the arterial cannula</summary>
    LimbDiseaseOnSide,

    /// <summary>obstacles.hostileRightGroin or hostileLeftGroin, of the side of the cannula</summary>
    HostileGroinOnSide,

    /// <summary>obstacles.hostileNeck</summary>
    HostileNeck,

    /// <summary>obstacles.abdominalHypertension</summary>
    AbdominalHypertension,

    /// <summary>heart.aorticRegurgitation at least moderate</summary>
    AorticRegurgitationModerate,

    /// <summary>heart.aorticRegurgitation mild</summary>
    AorticRegurgitationMild,

    /// <summary>heart.rightVentricularDysfunction at least moderate</summary>
    RightVentricularDysfunction,

    /// <summary>resources.transoesophagealEcho or transthoracicEcho missing</summary>
    NoEcho,

    /// <summary>resources: neither transoesophageal ultrasound nor fluoroscopy</summary>
    NoWireImaging,

    /// <summary>resources.stiffWire missing</summary>
    NoStiffWire,

    /// <summary>resources.vascularSurgeon missing</summary>
    NoVascularSurgeon,

    /// <summary>the intended vessel is occluded on the survey</summary>
    VesselOccluded,

    /// <summary>the intended vessel is narrowed on the survey</summary>
    VesselNarrowed,

    /// <summary>thrombus in the intended vessel on the survey</summary>
    VesselThrombus,

    /// <summary>the intended vessel was not confirmed as vein or artery in two ways</summary>
    VesselNotConfirmed,

    /// <summary>support.goal is circulation, both or arrest</summary>
    GoalNeedsCirculation,

    /// <summary>support.goal is gasExchange</summary>
    GoalIsGasExchange,

    /// <summary>support.goal is arrest</summary>
    GoalIsArrest,

    /// <summary>patient.ageYears below five</summary>
    UnderFiveYears,

    /// <summary>native lungs fail while the heart still ejects (goal both)</summary>
    LungsFailWhileHeartEjects,
}
