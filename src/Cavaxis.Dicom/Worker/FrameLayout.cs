using System.Globalization;

namespace Cavaxis.Dicom.Worker;

/// <summary>How the samples of a frame lie.</summary>
internal sealed record FrameLayout(int Columns, int Rows, int Frames, int Samples, int BitsAllocated, int BitsStored, int HighBit, bool IsSigned, bool IsPlanar)
{
    /// <summary>Longest decoded frame, bytes.</summary>
    public const long LongestFrame = 128 << 20;

    /// <summary>From the elements of the image pixel module.</summary>
    /// <param name="number">Value of an element; null where it is missing.</param>
    /// <exception cref="WorkerFaultException">They describe no picture that is read.</exception>
    public static FrameLayout Read(Func<uint, int?> number)
    {
        int columns = number(0x0028_0011) ?? 0;
        int rows = number(0x0028_0010) ?? 0;
        int samples = number(0x0028_0002) ?? 1;
        int allocated = number(0x0028_0100) ?? 0;
        int stored = number(0x0028_0101) ?? allocated;
        int high = number(0x0028_0102) ?? stored - 1;
        if (columns == 0 || rows == 0)
        {
            throw new WorkerFaultException("it states no rows and columns");
        }

        if (samples is not (1 or 3) || allocated is not (8 or 16 or 32) || stored < 1 || stored > allocated || high < stored - 1 || high >= allocated)
        {
            throw new WorkerFaultException(string.Create(
                CultureInfo.InvariantCulture, $"it states {samples} samples of {stored} in {allocated} bits with the highest at {high}: 1 or 3 samples of 8, 16 or 32 bits are read"));
        }

        FrameLayout layout = new(columns, rows, Math.Max(1, number(0x0028_0008) ?? 1), samples, allocated, stored, high, number(0x0028_0103) == 1, samples > 1 && number(0x0028_0006) == 1);
        return layout.StoredLength(string.Empty) <= LongestFrame ? layout : throw new WorkerFaultException("one frame is larger than this program decodes");
    }

    /// <summary>The layout that the decoder left, which may differ from the stated one.</summary>
    public FrameLayout Decoded(dynamic format, int planar) => this with
    {
        Samples = format.GetSamplesPerPixel(),
        BitsAllocated = format.GetBitsAllocated(),
        BitsStored = format.GetBitsStored(),
        HighBit = format.GetHighBit(),
        IsSigned = format.GetPixelRepresentation() == 1,
        IsPlanar = planar == 1,
    };

    /// <summary>Bytes of a frame that is not compressed.</summary>
    /// <param name="colours">Photometric interpretation: YBR_FULL_422 stores two samples a pixel.</param>
    public long StoredLength(string colours) => (long)Columns * Rows * (colours == "YBR_FULL_422" ? 2 : Samples) * (BitsAllocated / 8);

    /// <summary>As it stands in front of the samples on the wire.</summary>
    public byte[] Written(string colours)
    {
        using MemoryStream target = new();
        using BinaryWriter writer = new(target);
        foreach (int number in (int[])[Columns, Rows, Samples, BitsAllocated, BitsStored, HighBit, IsSigned ? 1 : 0, IsPlanar ? 1 : 0])
        {
            writer.Write(number);
        }

        writer.Write(colours.Trim());
        writer.Flush();
        return target.ToArray();
    }
}
