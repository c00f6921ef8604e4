using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Cavaxis.Records.Chain;

/// <summary>
/// The equation of the chain: hash(n) = SHA-256(tag ‖ hash(n−1) ‖ position ‖ sequence ‖ occurred ‖ recorded ‖ corrects ‖ stream ‖ kind ‖ who ‖ payload).
/// Numbers are eight bytes, the most significant first; each text and the payload have their length in four bytes before them, so that
/// no two events give the same bytes.
/// </summary>
internal static class ChainEquation
{
    private static readonly byte[] Tag = "cavaxis event 1\n"u8.ToArray();

    /// <summary>The hash of an event.</summary>
    /// <param name="row">The event; its own hash is not read.</param>
    /// <returns>32 bytes.</returns>
    public static byte[] HashOf(EventRow row)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Tag);
        hash.AppendData(row.PreviousHash);
        Span<byte> numbers = stackalloc byte[40];
        BinaryPrimitives.WriteInt64BigEndian(numbers, row.Position);
        BinaryPrimitives.WriteInt64BigEndian(numbers[8..], row.Sequence);
        BinaryPrimitives.WriteInt64BigEndian(numbers[16..], row.OccurredUs);
        BinaryPrimitives.WriteInt64BigEndian(numbers[24..], row.RecordedUs);
        BinaryPrimitives.WriteInt64BigEndian(numbers[32..], row.Corrects ?? 0);
        hash.AppendData(numbers);
        Append(hash, Encoding.UTF8.GetBytes(row.Stream));
        Append(hash, Encoding.UTF8.GetBytes(row.Kind));
        Append(hash, Encoding.UTF8.GetBytes(row.Who));
        Append(hash, row.Payload);
        return hash.GetHashAndReset();
    }

    private static void Append(IncrementalHash hash, byte[] part)
    {
        Span<byte> length = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, part.Length);
        hash.AppendData(length);
        hash.AppendData(part);
    }
}
