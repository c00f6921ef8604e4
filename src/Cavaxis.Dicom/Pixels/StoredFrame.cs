using System.Buffers.Binary;

namespace Cavaxis.Dicom.Pixels;

/// <summary>One frame as it is stored, decoded: samples of a pixel side by side, rows from the top, little endian.</summary>
public sealed class StoredFrame
{
    internal StoredFrame(int width, int height, int samples, int bitsAllocated, int bitsStored, int highBit, bool isSigned, string colours, ReadOnlyMemory<byte> bytes)
    {
        (Width, Height, Samples, BitsAllocated, BitsStored, HighBit, IsSigned, Colours, Bytes) =
            (width, height, samples, bitsAllocated, bitsStored, highBit, isSigned, colours, bytes);
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Samples a pixel.</summary>
    public int Samples { get; }

    /// <summary>Bits in which a sample lies: 8, 16 or 32.</summary>
    public int BitsAllocated { get; }

    /// <summary>Bits of them that are used.</summary>
    public int BitsStored { get; }

    /// <summary>The highest bit that is used.</summary>
    public int HighBit { get; }

    /// <summary>True where values have a sign.</summary>
    public bool IsSigned { get; }

    /// <summary>What the decoded samples stand for, such as MONOCHROME2, RGB or YBR_FULL.</summary>
    public string Colours { get; }

    /// <summary>All samples.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>The stored value of a sample, with its sign, without bits that are not used.</summary>
    /// <param name="x">Column, from 0.</param>
    /// <param name="y">Row, from 0.</param>
    /// <param name="sample">Sample of the pixel, from 0.</param>
    public long Value(int x, int y, int sample = 0) => At((((long)y * Width) + x) * Samples + sample);

    /// <summary>The stored value of a sample by its place in the frame.</summary>
    internal long At(long index)
    {
        int size = BitsAllocated / 8;
        ReadOnlySpan<byte> at = Bytes.Span.Slice(checked((int)(index * size)), size);
        ulong raw = size switch { 1 => at[0], 2 => BinaryPrimitives.ReadUInt16LittleEndian(at), _ => BinaryPrimitives.ReadUInt32LittleEndian(at) };
        ulong used = (raw >> (HighBit + 1 - BitsStored)) & ((1UL << BitsStored) - 1);
        return IsSigned && (used >> (BitsStored - 1)) == 1 ? (long)used - (1L << BitsStored) : (long)used;
    }
}
