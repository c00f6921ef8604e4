namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Where the circuit returns its blood, which decides over the number that matters.</summary>
public enum SupportSense
{
    /// <summary>No circuit.</summary>
    None,

    /// <summary>All to a vein.</summary>
    Venous,

    /// <summary>All to an artery.</summary>
    Arterial,

    /// <summary>To both.</summary>
    Both,
}
