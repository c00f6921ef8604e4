namespace Cavaxis.Course.Weaning;

/// <summary>When in a trial a criterion is asked.</summary>
public enum WeaningRole
{
    /// <summary>At the first step, before support is lowered: is the trial one that the source describes?</summary>
    Entry,

    /// <summary>At the lowest support: did the patient carry on alone?</summary>
    Success,

    /// <summary>At every step: where the source ends the trial.</summary>
    Stop,
}
