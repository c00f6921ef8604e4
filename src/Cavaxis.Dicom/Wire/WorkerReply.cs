using System.Buffers.Binary;

namespace Cavaxis.Dicom.Wire;

/// <summary>
/// Head of what the worker answers: a mark, so that anything which a native library prints between is noticed, whether the request was
/// done, and how many bytes follow.
/// </summary>
/// <param name="IsDone">False where the bytes are the reason, as text.</param>
/// <param name="Length">Bytes that follow.</param>
internal readonly record struct WorkerReply(bool IsDone, int Length)
{
    /// <summary>Bytes of a head.</summary>
    public const int Size = 9;

    private const uint Mark = 0xCA7A_D1C0;

    /// <summary>Writes the head.</summary>
    public void Write(Span<byte> target)
    {
        BinaryPrimitives.WriteUInt32LittleEndian(target, Mark);
        target[4] = IsDone ? (byte)1 : (byte)0;
        BinaryPrimitives.WriteInt32LittleEndian(target[5..], Length);
    }

    /// <summary>Reads a head; null where the bytes are none.</summary>
    public static WorkerReply? Read(ReadOnlySpan<byte> source) =>
        BinaryPrimitives.ReadUInt32LittleEndian(source) != Mark || source[4] > 1 || BinaryPrimitives.ReadInt32LittleEndian(source[5..]) is not (>= 0 and int length)
            ? null
            : new WorkerReply(source[4] == 1, length);
}
