using Cavaxis.Anatomy.Sampling;

namespace Cavaxis.Imaging.Exercises;

/// <summary>Chance of an exercise: one draw after the other, the same for the same seed, level and attempt.</summary>
/// <param name="seed">Seed.</param>
/// <param name="level">Level.</param>
/// <param name="attempt">Attempt.</param>
internal sealed class ExerciseDraw(ulong seed, int level, int attempt)
{
    private const uint Mark = 0xe8e12c;
    private uint drawn;

    /// <summary>An even draw.</summary>
    /// <param name="low">From.</param>
    /// <param name="high">To.</param>
    public double Between(double low, double high)
    {
        (uint w0, _, _, _) = Philox.Bits(drawn++, (uint)level, (uint)attempt, Mark, seed);
        return low + ((high - low) * (w0 / 4294967296.0));
    }

    /// <summary>One of some things.</summary>
    /// <param name="of">The things.</param>
    public T One<T>(params T[] of) => of[Math.Min((int)Between(0, of.Length), of.Length - 1)];
}
