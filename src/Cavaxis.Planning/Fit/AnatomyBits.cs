using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Cavaxis.Planning.Fit;

/// <summary>Sets of anatomies, one bit for each, filled by comparing rows of numbers.</summary>
internal static class AnatomyBits
{
    private const int WordBits = 64;

    /// <summary>Words that a set of so many anatomies takes.</summary>
    /// <param name="count">Number of anatomies.</param>
    /// <returns>Number of 64-bit words.</returns>
    public static int WordsFor(int count) => (count + WordBits - 1) / WordBits;

    /// <summary>The anatomies in which one number is at most another.</summary>
    /// <param name="least">One row.</param>
    /// <param name="most">The other row.</param>
    /// <param name="bits">The set; overwritten.</param>
    /// <returns>Number of anatomies in the set.</returns>
    public static int WhereAtMost(ReadOnlySpan<double> least, ReadOnlySpan<double> most, Span<ulong> bits)
    {
        int count = 0;
        for (int word = 0; word < bits.Length; word++)
        {
            int from = word * WordBits;
            int length = Math.Min(WordBits, least.Length - from);
            bits[word] = AtMost(least.Slice(from, length), most.Slice(from, length));
            count += BitOperations.PopCount(bits[word]);
        }

        return count;
    }

    /// <summary>Counts the anatomies of a set.</summary>
    /// <param name="bits">The set.</param>
    /// <returns>Their number.</returns>
    public static int Count(ReadOnlySpan<ulong> bits)
    {
        int count = 0;
        foreach (ulong word in bits)
        {
            count += BitOperations.PopCount(word);
        }

        return count;
    }

    private static ulong AtMost(ReadOnlySpan<double> least, ReadOnlySpan<double> most)
    {
        ulong bits = 0;
        ReadOnlySpan<Vector256<double>> leasts = MemoryMarshal.Cast<double, Vector256<double>>(least);
        ReadOnlySpan<Vector256<double>> mosts = MemoryMarshal.Cast<double, Vector256<double>>(most);
        for (int v = 0; v < leasts.Length; v++)
        {
            ulong four = Vector256.LessThanOrEqual(leasts[v], mosts[v]).ExtractMostSignificantBits();
            bits |= four << (v * Vector256<double>.Count);
        }

        for (int i = leasts.Length * Vector256<double>.Count; i < least.Length; i++)
        {
            bits |= least[i] <= most[i] ? 1UL << i : 0;
        }

        return bits;
    }
}
