namespace Cavaxis.Anatomy.Sampling;

/// <summary>
/// Philox4x32-10, a counter-based generator (Salmon, Moraes, Dror and Shaw, SC11, 2011): the same counter and key give
/// the same 128 bits on every machine, in any order and on any thread, and there is no state to share.
/// </summary>
public static class Philox
{
    private const uint MultiplierA = 0xD2511F53;
    private const uint MultiplierB = 0xCD9E8D57;
    private const uint WeylA = 0x9E3779B9;
    private const uint WeylB = 0xBB67AE85;
    private const int Rounds = 10;

    /// <summary>The 128 bits that belong to a counter under a key.</summary>
    /// <param name="c0">Counter, lowest word.</param>
    /// <param name="c1">Counter, second word.</param>
    /// <param name="c2">Counter, third word.</param>
    /// <param name="c3">Counter, highest word.</param>
    /// <param name="key">Key; its low half is the first key word.</param>
    /// <returns>Four words of random bits.</returns>
    public static (uint W0, uint W1, uint W2, uint W3) Bits(uint c0, uint c1, uint c2, uint c3, ulong key)
    {
        uint k0 = (uint)key;
        uint k1 = (uint)(key >> 32);
        for (int round = 0; round < Rounds; round++)
        {
            ulong a = (ulong)MultiplierA * c0;
            ulong b = (ulong)MultiplierB * c2;
            (c0, c1, c2, c3) = ((uint)(b >> 32) ^ c1 ^ k0, (uint)b, (uint)(a >> 32) ^ c3 ^ k1, (uint)a);
            k0 = unchecked(k0 + WeylA);
            k1 = unchecked(k1 + WeylB);
        }

        return (c0, c1, c2, c3);
    }
}
