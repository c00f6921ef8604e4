namespace Cavaxis.Circulation.Axis;

/// <summary>Where a return port points.</summary>
public enum JetDirection
{
    /// <summary>Along the axis, as from an end hole placed from the neck.</summary>
    TowardsFeet,

    /// <summary>Along the axis, as from an end hole placed from the groin.</summary>
    TowardsHead,

    /// <summary>Across the axis, as from the side port of a dual-lumen cannula.</summary>
    TowardsTricuspid,
}
