namespace Cavaxis.Devices.Cannulae;

/// <summary>Where the holes of a group look.</summary>
public enum HoleFacing
{
    /// <summary>All round the wall.</summary>
    AllRound,

    /// <summary>One side of the wall only, so that turning the cannula turns the jet.</summary>
    OneSide,

    /// <summary>Along the axis: the open end of the tip.</summary>
    End,
}
