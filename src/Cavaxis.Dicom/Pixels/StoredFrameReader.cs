using System.Buffers.Binary;

namespace Cavaxis.Dicom.Pixels;

/// <summary>Reads a frame that the worker sends, and lays its samples side by side.</summary>
internal static class StoredFrameReader
{
    private const int NumbersInFront = 8;

    /// <summary>The frame.</summary>
    /// <param name="sent">What the worker sent: the layout and the samples.</param>
    /// <param name="swapsWords">True for 32-bit samples of a big-endian file: they come as 16-bit words in the other order.</param>
    /// <returns>Null where the samples do not fill the layout.</returns>
    public static StoredFrame? Read(byte[] sent, bool swapsWords)
    {
        if (sent.Length < (NumbersInFront * 4) + 1)
        {
            return null;
        }

        int[] numbers = [.. Enumerable.Range(0, NumbersInFront).Select(i => BinaryPrimitives.ReadInt32LittleEndian(sent.AsSpan(i * 4)))];
        (int width, int height, int samples, int allocated, int stored, int high, bool isSigned, bool isPlanar) =
            (numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5], numbers[6] == 1, numbers[7] == 1);
        int letters = sent[NumbersInFront * 4];
        int start = (NumbersInFront * 4) + 1 + letters;
        if (sent.Length < start || allocated is not (8 or 16 or 32) || samples is not (1 or 3) || stored < 1 || stored > allocated || high < stored - 1 || high >= allocated)
        {
            return null;
        }

        string colours = System.Text.Encoding.Latin1.GetString(sent, (NumbersInFront * 4) + 1, letters);
        ReadOnlyMemory<byte> bytes = sent.AsMemory(start);
        int size = allocated / 8;
        long pixels = (long)width * height;
        if (colours == "YBR_FULL_422" && bytes.Length == pixels * 2 && samples == 3 && size == 1)
        {
            bytes = Widened(bytes.Span, width, height);
            colours = "YBR_FULL";
        }

        if (bytes.Length < pixels * samples * size)
        {
            return null;
        }

        bytes = bytes[..(int)(pixels * samples * size)];
        if (isPlanar && samples == 3)
        {
            bytes = Interleaved(bytes.Span, (int)pixels, size);
        }

        if (swapsWords && size == 4)
        {
            bytes = Swapped(bytes.Span);
        }

        return new StoredFrame(width, height, samples, allocated, stored, high, isSigned, colours, bytes);
    }

    /// <summary>Two pixels share their colour: Y Y Cb Cr (PS3.3 C.7.6.3.1.2).</summary>
    private static byte[] Widened(ReadOnlySpan<byte> shared, int width, int height)
    {
        byte[] wide = new byte[width * height * 3];
        for (int pixel = 0; pixel < width * height; pixel++)
        {
            int pair = pixel / 2 * 4;
            wide[pixel * 3] = shared[pair + (pixel % 2)];
            wide[(pixel * 3) + 1] = pair + 2 < shared.Length ? shared[pair + 2] : (byte)128;
            wide[(pixel * 3) + 2] = pair + 3 < shared.Length ? shared[pair + 3] : (byte)128;
        }

        return wide;
    }

    private static byte[] Interleaved(ReadOnlySpan<byte> planes, int pixels, int size)
    {
        byte[] mixed = new byte[planes.Length];
        for (int plane = 0; plane < 3; plane++)
        {
            for (int pixel = 0; pixel < pixels; pixel++)
            {
                planes.Slice(((plane * pixels) + pixel) * size, size).CopyTo(mixed.AsSpan(((pixel * 3) + plane) * size));
            }
        }

        return mixed;
    }

    private static byte[] Swapped(ReadOnlySpan<byte> words)
    {
        byte[] swapped = new byte[words.Length];
        for (int i = 0; i + 3 < words.Length; i += 4)
        {
            words.Slice(i + 2, 2).CopyTo(swapped.AsSpan(i));
            words.Slice(i, 2).CopyTo(swapped.AsSpan(i + 2));
        }

        return swapped;
    }
}
