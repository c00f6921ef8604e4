using Cavaxis.Dicom.Elements;

namespace Cavaxis.Dicom.Pixels;

/// <summary>The table of colours of a picture that stores numbers of colours (PS3.3 C.7.6.3.1.5, C.7.9.2).</summary>
internal sealed class Palette
{
    /// <summary>Longest table: 16-bit numbers.</summary>
    private const int Longest = 65_536;

    private readonly int first;
    private readonly byte[][] tables;

    private Palette(int first, byte[][] tables) => (this.first, this.tables) = (first, tables);

    /// <summary>The table of a file.</summary>
    /// <returns>Null where there is none that is whole.</returns>
    public static Palette? Read(DicomSet data)
    {
        byte[][] tables = new byte[3][];
        int first = 0;
        for (uint channel = 0; channel < 3; channel++)
        {
            if (data.Numbers(0x0028_1101 + channel) is not [double entries, double start, double bits] || bits is not (8 or 16))
            {
                return null;
            }

            int length = entries is > 0 and <= Longest ? (int)entries : Longest;
            int[]? values = data.Find(0x0028_1221 + channel) is { Value.Length: > 0 } segments
                ? Unfolded(Words(segments.Value.Span), length)
                : data.Find(0x0028_1201 + channel) is { Value.Length: > 0 } plain ? Plain(plain.Value.Span, length, (int)bits) : null;
            if (values is null)
            {
                return null;
            }

            // Some makers say 16 bits and fill only the lower eight: then those are the colour.
            bool isWide = bits > 8 && values.Any(static v => v > 255);
            tables[channel] = [.. values.Select(v => (byte)(isWide ? v >> 8 : Math.Min(v, 255)))];
            first = (int)start;
        }

        return new Palette(first, tables);
    }

    /// <summary>The colour of a number: below and above the table its ends.</summary>
    public void Colour(long number, Span<byte> target)
    {
        for (int channel = 0; channel < 3; channel++)
        {
            target[channel] = tables[channel][Math.Clamp(number - first, 0, tables[channel].Length - 1)];
        }
    }

    private static int[] Words(ReadOnlySpan<byte> bytes)
    {
        int[] words = new int[bytes.Length / 2];
        for (int i = 0; i < words.Length; i++)
        {
            words[i] = bytes[2 * i] | (bytes[(2 * i) + 1] << 8);
        }

        return words;
    }

    private static int[]? Plain(ReadOnlySpan<byte> bytes, int length, int bits)
    {
        // Eight-bit tables lie in bytes; where there are twice as many, each entry has a word of its own.
        if (bits == 8 && bytes.Length < length * 2)
        {
            return bytes.Length >= length ? [.. bytes[..length].ToArray().Select(static b => (int)b)] : null;
        }

        int[] words = Words(bytes);
        return words.Length >= length ? words[..length] : null;
    }

    /// <summary>Runs of values, straight lines, and runs once more (PS3.3 C.7.9.2.1.1).</summary>
    private static int[]? Unfolded(int[] words, int length)
    {
        List<int> values = [];
        int at = 0;
        int budget = Longest;
        return Unfold(words, ref at, words.Length, int.MaxValue, values, isInner: false, ref budget) && values.Count >= length ? [.. values.Take(length)] : null;
    }

    private static bool Unfold(int[] words, ref int at, int end, int segments, List<int> values, bool isInner, ref int budget)
    {
        for (int done = 0; done < segments && at + 1 < end; done++)
        {
            (int kind, int count) = (words[at], words[at + 1]);
            at += 2;
            if (--budget < 0 || values.Count > Longest)
            {
                return false;
            }

            switch (kind)
            {
                case 0 when at + count <= end:
                    values.AddRange(words.AsSpan(at, count));
                    at += count;
                    break;
                case 1 when at < end && values.Count > 0 && values.Count + count <= Longest:
                    double from = values[^1];
                    for (int i = 1; i <= count; i++)
                    {
                        values.Add((int)Math.Round(from + ((words[at] - from) * i / count)));
                    }

                    at++;
                    break;
                case 2 when !isInner && at + 1 < end:
                    int back = (words[at] | (words[at + 1] << 16)) / 2;
                    at += 2;
                    if (back < 0 || back >= words.Length || !Unfold(words, ref back, words.Length, count, values, isInner: true, ref budget))
                    {
                        return false;
                    }

                    break;
                default:
                    return false;
            }
        }

        return true;
    }
}
