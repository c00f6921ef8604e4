namespace Cavaxis.Planning.Steps;

/// <summary>Part of an insertion.</summary>
public enum InsertionPhase
{
    /// <summary>Another step of the procedure, or none.</summary>
    None,

    /// <summary>The wire is fed.</summary>
    WireFeed,

    /// <summary>The cannula goes in over the wire.</summary>
    CannulaAdvance,

    /// <summary>Introducer and wire come out.</summary>
    Removal,
}
