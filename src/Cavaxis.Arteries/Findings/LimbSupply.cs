namespace Cavaxis.Arteries.Findings;

/// <summary>What the model says of the blood flow of a leg.</summary>
public enum LimbSupply
{
    /// <summary>Flow at or above the need, its lower bound included.</summary>
    Supplied,

    /// <summary>Flow near the need: its interval holds it.</summary>
    Borderline,

    /// <summary>Flow below the need, its upper bound included, or below the least flow in any case.</summary>
    Starved,
}
