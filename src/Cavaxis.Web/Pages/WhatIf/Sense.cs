namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Which way a computed difference points.</summary>
internal enum Sense
{
    /// <summary>Less than is worth telling.</summary>
    Same,

    /// <summary>Up.</summary>
    Up,

    /// <summary>Down.</summary>
    Down,

    /// <summary>No value in some member.</summary>
    Unknown,
}
