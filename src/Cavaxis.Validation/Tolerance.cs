namespace Cavaxis.Validation;

/// <summary>How a computed value is held against the expected one.</summary>
public enum Tolerance
{
    /// <summary>|got − expected| is at most the bound.</summary>
    Absolute,

    /// <summary>|got − expected| is at most the bound times |expected|.</summary>
    Relative,

    /// <summary>Got is at least expected; the bound is not used.</summary>
    AtLeast,

    /// <summary>Got is at most expected; the bound is not used.</summary>
    AtMost,
}
