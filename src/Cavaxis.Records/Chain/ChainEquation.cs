using System.Buffers;
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
        const int Numbers = 5 * sizeof(long);
        int most = Tag.Length + row.PreviousHash.Length + Numbers + (4 * sizeof(int)) + (3 * (row.Stream.Length + row.Kind.Length + row.Who.Length)) + row.Payload.Length;
        byte[] buffer = ArrayPool<byte>.Shared.Rent(most);
        try
        {
            Span<byte> rest = buffer;
            Put(ref rest, Tag);
            Put(ref rest, row.PreviousHash);
            foreach (long number in (ReadOnlySpan<long>)[row.Position, row.Sequence, row.OccurredUs, row.RecordedUs, row.Corrects ?? 0])
            {
                BinaryPrimitives.WriteInt64BigEndian(rest, number);
                rest = rest[sizeof(long)..];
            }

            PutText(ref rest, row.Stream);
            PutText(ref rest, row.Kind);
            PutText(ref rest, row.Who);
            BinaryPrimitives.WriteInt32BigEndian(rest, row.Payload.Length);
            rest = rest[sizeof(int)..];
            Put(ref rest, row.Payload);
            return SHA256.HashData(buffer.AsSpan(0, buffer.Length - rest.Length));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer);
        }
    }

    private static void Put(ref Span<byte> rest, ReadOnlySpan<byte> part)
    {
        part.CopyTo(rest);
        rest = rest[part.Length..];
    }

    private static void PutText(ref Span<byte> rest, string text)
    {
        int length = Encoding.UTF8.GetBytes(text, rest[sizeof(int)..]);
        BinaryPrimitives.WriteInt32BigEndian(rest, length);
        rest = rest[(sizeof(int) + length)..];
    }
}
