using Cavaxis.Devices.Wires;

namespace Cavaxis.Planning.Insertion;

/// <summary>What is asked of an insertion study.</summary>
public sealed record InsertionOptions
{
    /// <summary>Fewest anatomies.</summary>
    public const int FewestAnatomies = 10;

    /// <summary>Most anatomies.</summary>
    public const int MostAnatomies = 5000;

    /// <summary>Class of wire.</summary>
    public WireClass Wire { get; init; } = WireClass.Stiff;

    /// <summary>Number of sampled anatomies.</summary>
    public int Anatomies { get; init; } = 200;

    /// <summary>Seed.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Whether other wires, depths and sides are tried, each in a quarter of the anatomies.</summary>
    public bool Advice { get; init; } = true;

    /// <summary>Whether the middle anatomy and the commonest ways of going wrong are kept moment by moment, to be played.</summary>
    public bool Plays { get; init; }
}
