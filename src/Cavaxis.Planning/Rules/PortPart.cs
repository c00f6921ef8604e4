namespace Cavaxis.Planning.Rules;

/// <summary>Which part of a port must lie in the zone.</summary>
public enum PortPart
{
    /// <summary>The tip of the cannula.</summary>
    Tip,

    /// <summary>The middle of the hole group.</summary>
    Middle,

    /// <summary>The whole hole group, from its first to its last hole.</summary>
    Whole,

    /// <summary>The point on the tricuspid plane at which a side jet aims, given the cannula's tilt in the atrium.</summary>
    JetAim,
}
