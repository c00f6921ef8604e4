namespace Cavaxis.Reports.Gif;

/// <summary>The compression of GIF (variable-length LZW, GIF89a appendix F): bytes in, blocks of at most 255 bytes out.</summary>
internal static class GifCodes
{
    private const int Clear = 256;
    private const int End = 257;
    private const int MostCodes = 4096;
    private const int LongestBlock = 255;

    /// <summary>Compresses bytes.</summary>
    /// <param name="pixels">Indices into the palette.</param>
    /// <param name="to">Where the blocks go, with the empty one at their end.</param>
    public static void Write(ReadOnlySpan<byte> pixels, Stream to)
    {
        using MemoryStream packed = new();
        Dictionary<int, int> known = [];
        uint bits = 0;
        int held = 0;
        int length = 9;
        int next = End + 1;
        Put(Clear);
        int at = pixels[0];
        for (int i = 1; i < pixels.Length; i++)
        {
            int pair = (at << 8) | pixels[i];
            if (known.TryGetValue(pair, out int longer))
            {
                at = longer;
                continue;
            }

            Put(at);
            if (next < MostCodes)
            {
                known[pair] = next;
                if (next == 1 << length)
                {
                    length++;
                }

                next++;
            }
            else
            {
                Put(Clear);
                known.Clear();
                (length, next) = (9, End + 1);
            }

            at = pixels[i];
        }

        Put(at);
        // The reader has taken one more word in by then; the end is written as long as it expects.
        if (next == 1 << length && length < 12)
        {
            length++;
        }

        Put(End);
        if (held > 0)
        {
            packed.WriteByte((byte)bits);
        }

        Blocks(packed.GetBuffer().AsSpan(0, (int)packed.Length), to);

        void Put(int code)
        {
            bits |= (uint)code << held;
            held += length;
            while (held >= 8)
            {
                packed.WriteByte((byte)bits);
                bits >>= 8;
                held -= 8;
            }
        }
    }

    private static void Blocks(ReadOnlySpan<byte> bytes, Stream to)
    {
        for (int from = 0; from < bytes.Length; from += LongestBlock)
        {
            ReadOnlySpan<byte> block = bytes[from..Math.Min(from + LongestBlock, bytes.Length)];
            to.WriteByte((byte)block.Length);
            to.Write(block);
        }

        to.WriteByte(0);
    }
}
