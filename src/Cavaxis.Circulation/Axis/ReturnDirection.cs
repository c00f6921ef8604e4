namespace Cavaxis.Circulation.Axis;

/// <summary>Where a return jet points.</summary>
public enum ReturnDirection
{
    /// <summary>Along the axis towards the feet: an end hole that comes from the neck.</summary>
    TowardsFeet,

    /// <summary>Along the axis towards the head: an end hole that comes from the groin.</summary>
    TowardsHead,

    /// <summary>Sideways, meant for the tricuspid valve: the return port of a dual-lumen cannula.</summary>
    TowardsTricuspid,
}
