namespace Cavaxis.Planning.Case;

/// <summary>Grade of a valve lesion or of reduced function.</summary>
public enum Severity
{
    /// <summary>Not assessed.</summary>
    Unknown,

    /// <summary>None.</summary>
    None,

    /// <summary>Mild.</summary>
    Mild,

    /// <summary>Moderate.</summary>
    Moderate,

    /// <summary>Severe.</summary>
    Severe,
}
