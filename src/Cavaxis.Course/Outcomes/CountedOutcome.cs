namespace Cavaxis.Course.Outcomes;

/// <summary>What is counted of a course.</summary>
public enum CountedOutcome
{
    /// <summary>Left hospital alive.</summary>
    SurvivedToDischarge,

    /// <summary>Support removed with the patient alive a day later, without support again.</summary>
    Weaned,

    /// <summary>A cannula out of its place that was corrected or replaced.</summary>
    Malposition,

    /// <summary>Ischaemia of the cannulated leg that needed treatment.</summary>
    LimbIschaemia,

    /// <summary>Thrombus of a cannulated vein found after removal.</summary>
    VenousThrombosis,

    /// <summary>Bleeding that needed transfusion or a procedure.</summary>
    Bleeding,

    /// <summary>Haemolysis, plasma free haemoglobin above 500 mg/L.</summary>
    Haemolysis,

    /// <summary>Stroke or bleeding within the skull.</summary>
    Stroke,

    /// <summary>Membrane lung or circuit exchanged for clot or failure.</summary>
    CircuitExchange,

    /// <summary>Infection of blood or cannula site.</summary>
    Infection,
}
