namespace Cavaxis.Course.Events;

/// <summary>What a complication came to.</summary>
public enum ComplicationGravity
{
    /// <summary>Watched, not treated.</summary>
    Watched,

    /// <summary>Treated with drugs, blood or settings.</summary>
    Treated,

    /// <summary>Needed an operation or another procedure.</summary>
    Procedure,

    /// <summary>Threatened life.</summary>
    LifeThreatening,

    /// <summary>Death followed from it.</summary>
    Fatal,
}
