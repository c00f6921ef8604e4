using System.Buffers.Binary;
using Cavaxis.Dicom.Pixels;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Dicom.Identity;

/// <summary>Writes frames without what is masked, and without bits that no value uses: overlays may hide in them.</summary>
/// <param name="mask">What is blackened; null for nothing.</param>
/// <param name="regions">Calibrated regions of the file.</param>
internal sealed class FramePainter(PixelMask? mask, IReadOnlyList<CalibratedRegion> regions)
{
    /// <summary>The samples of a frame, values in the lowest bits.</summary>
    /// <returns>The bytes, and how many pixels were blackened.</returns>
    public (byte[] Bytes, int Blackened) Paint(StoredFrame frame)
    {
        if (mask is null && frame.BitsStored == frame.BitsAllocated)
        {
            return (frame.Bytes.ToArray(), 0);
        }

        int size = frame.BitsAllocated / 8;
        byte[] bytes = new byte[frame.Width * frame.Height * frame.Samples * size];
        int pixels = frame.Width * frame.Height;
        long[] black = Black(frame, pixels);
        int blackened = 0;
        for (int pixel = 0; pixel < pixels; pixel++)
        {
            bool isCovered = mask?.Covers(pixel % frame.Width, pixel / frame.Width, regions) == true;
            blackened += isCovered ? 1 : 0;
            for (int sample = 0; sample < frame.Samples; sample++)
            {
                int at = (pixel * frame.Samples) + sample;
                long value = isCovered ? black[sample] : frame.At(at);
                Span<byte> target = bytes.AsSpan(at * size, size);
                switch (size)
                {
                    case 1:
                        target[0] = unchecked((byte)value);
                        break;
                    case 2:
                        BinaryPrimitives.WriteUInt16LittleEndian(target, unchecked((ushort)value));
                        break;
                    default:
                        BinaryPrimitives.WriteUInt32LittleEndian(target, unchecked((uint)value));
                        break;
                }
            }
        }

        return (bytes, blackened);
    }

    /// <summary>What is shown black: of grey the least value of the frame, or the greatest where that is black; of a palette number 0.</summary>
    private long[] Black(StoredFrame frame, int pixels)
    {
        if (frame.Samples == 3)
        {
            long middle = 1L << (frame.BitsStored - 1);
            return frame.Colours.StartsWith("YBR_FULL", StringComparison.Ordinal) ? [0, middle, middle] : [0, 0, 0];
        }

        if (mask is null || !frame.Colours.StartsWith("MONOCHROME", StringComparison.Ordinal))
        {
            return [0];
        }

        bool isInverse = frame.Colours == "MONOCHROME1";
        long best = frame.At(0);
        for (int i = 1; i < pixels; i++)
        {
            best = isInverse ? Math.Max(best, frame.At(i)) : Math.Min(best, frame.At(i));
        }

        return [best];
    }
}
