namespace Cavaxis.Reports.Drawings;

/// <summary>Line pattern that fills an area, so that meaning never rests on colour alone.</summary>
public enum Hatch
{
    /// <summary>No pattern.</summary>
    None,

    /// <summary>Lines rising to the right.</summary>
    Rising,

    /// <summary>Lines falling to the right.</summary>
    Falling,

    /// <summary>Both diagonals.</summary>
    Crossed,

    /// <summary>Level lines.</summary>
    Level,

    /// <summary>Upright lines.</summary>
    Upright,
}
