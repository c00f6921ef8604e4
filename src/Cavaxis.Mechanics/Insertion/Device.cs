namespace Cavaxis.Mechanics.Insertion;

/// <summary>What is inserted, from the inside outwards.</summary>
public enum Device
{
    /// <summary>The guide wire.</summary>
    Wire,

    /// <summary>The introducer inside the cannula, which tapers from the wire to it.</summary>
    Introducer,

    /// <summary>The cannula.</summary>
    Cannula,
}
