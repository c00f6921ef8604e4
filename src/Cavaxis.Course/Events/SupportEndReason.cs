namespace Cavaxis.Course.Events;

/// <summary>Why support ended.</summary>
public enum SupportEndReason
{
    /// <summary>Heart or lungs recovered.</summary>
    Recovered,

    /// <summary>Another device or a transplant took over.</summary>
    Bridged,

    /// <summary>The patient died on support.</summary>
    Died,

    /// <summary>Treatment was withdrawn.</summary>
    Withdrawn,

    /// <summary>A complication forced the end.</summary>
    Complication,

    /// <summary>The patient went elsewhere on support.</summary>
    Transferred,

    /// <summary>Another, told in the remark.</summary>
    Other,
}
