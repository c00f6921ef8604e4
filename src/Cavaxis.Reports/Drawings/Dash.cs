namespace Cavaxis.Reports.Drawings;

/// <summary>How a line is broken.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    Solid,

    /// <summary>Long strokes.</summary>
    Dashed,

    /// <summary>Dots.</summary>
    Dotted,

    /// <summary>Stroke and dot in turn.</summary>
    DashDot,

    /// <summary>Very long strokes.</summary>
    LongDash,
}
