namespace Cavaxis.Bedside.Sealing;

/// <summary>
/// What deriving a key costs (Argon2id, RFC 9106). New files take 64 MiB and 3 passes, which section 4 of that document recommends where 2 GiB are too much (from
/// memory). What is read must lie within bounds that are checked before any memory is taken: a hostile header exhausts nothing.
/// </summary>
/// <param name="MemoryKiB">Memory, KiB.</param>
/// <param name="Passes">Passes over it.</param>
public sealed record SealCost(int MemoryKiB, int Passes)
{
    /// <summary>Least memory, KiB.</summary>
    public const int LeastMemoryKiB = 19_456;

    /// <summary>Most memory, KiB.</summary>
    public const int MostMemoryKiB = 262_144;

    /// <summary>Fewest passes.</summary>
    public const int FewestPasses = 2;

    /// <summary>Most passes.</summary>
    public const int MostPasses = 8;

    /// <summary>Cost of new files.</summary>
    public static SealCost Usual { get; } = new(65_536, 3);

    /// <summary>The least that is read; tests use it.</summary>
    public static SealCost Least { get; } = new(LeastMemoryKiB, FewestPasses);

    /// <summary>True where a key may be derived at this cost.</summary>
    public bool IsWithinBounds => MemoryKiB is >= LeastMemoryKiB and <= MostMemoryKiB && Passes is >= FewestPasses and <= MostPasses;
}
