namespace Cavaxis.Records.Access;

/// <summary>What a person wants to do in a programme.</summary>
public enum Verb
{
    /// <summary>Read a patient's record.</summary>
    ReadPatient,

    /// <summary>Take a new patient in.</summary>
    AdmitPatient,

    /// <summary>Write down an observation, a step, a finding.</summary>
    Record,

    /// <summary>Put right or withdraw what was written down.</summary>
    Correct,

    /// <summary>Give a patient over to another programme.</summary>
    TransferPatient,

    /// <summary>Write a de-identified pack for a second opinion, or take an answer in.</summary>
    ShareForOpinion,

    /// <summary>Read outcomes of the whole programme.</summary>
    ReadOutcomes,

    /// <summary>Change the programme's rules and limits.</summary>
    ChangeRules,

    /// <summary>Read who read and wrote what.</summary>
    ReadAudit,

    /// <summary>Register people, give and end roles, set a new password for someone.</summary>
    KeepPeople,

    /// <summary>Verify, back up and restore the store.</summary>
    KeepStore,
}
