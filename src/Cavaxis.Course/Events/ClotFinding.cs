namespace Cavaxis.Course.Events;

/// <summary>What was found in a vein.</summary>
public enum ClotFinding
{
    /// <summary>No thrombus: seen whole, and compressible where it can be compressed.</summary>
    None,

    /// <summary>A thrombus that leaves part of the lumen open.</summary>
    Partial,

    /// <summary>A thrombus that fills the lumen.</summary>
    Complete,

    /// <summary>Not seen; says nothing about a thrombus.</summary>
    NotSeen,
}
