namespace Cavaxis.Imaging.Echo;

/// <summary>What of wire, introducer and cannula is in the vessel.</summary>
public enum AssemblyState
{
    /// <summary>The wire alone.</summary>
    WireOnly,

    /// <summary>The cannula with its introducer over the wire.</summary>
    Assembly,

    /// <summary>The cannula alone.</summary>
    CannulaAlone,

    /// <summary>The cannula with a wire put back through it.</summary>
    WireBackIn,
}
