namespace Cavaxis.Course.Events;

/// <summary>What became of the patient.</summary>
public enum OutcomeKind
{
    /// <summary>Came off support alive.</summary>
    WeanedFromSupport,

    /// <summary>Died on support.</summary>
    DiedOnSupport,

    /// <summary>Died in hospital after support.</summary>
    DiedAfterSupport,

    /// <summary>Received a transplant.</summary>
    BridgedToTransplant,

    /// <summary>Received a durable device.</summary>
    BridgedToDevice,

    /// <summary>Went to another hospital.</summary>
    TransferredOut,

    /// <summary>Left hospital alive.</summary>
    SurvivedToDischarge,

    /// <summary>Alive 90 days after the start of support.</summary>
    AliveAt90Days,

    /// <summary>Died within 90 days of the start, after discharge.</summary>
    DiedWithin90Days,

    /// <summary>Alive a year after the start.</summary>
    AliveAt1Year,

    /// <summary>Not known any more.</summary>
    LostToFollowUp,
}
