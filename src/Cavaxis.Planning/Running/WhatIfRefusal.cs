namespace Cavaxis.Planning.Running;

/// <summary>Why <c>whatif</c> gives no numbers.</summary>
public enum WhatIfRefusal
{
    /// <summary>The readings could not be fitted.</summary>
    NoFit,

    /// <summary>More than half of the members are lost, most of them because they do not come to rest.</summary>
    NotSettled,

    /// <summary>More than half of the members are lost, most of them because the changed numbers leave the range of the model.</summary>
    OutOfRange,
}
