using System.Buffers.Binary;
using System.Text;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Tests.Samples;

/// <summary>A reader for the tests alone: uncompressed, little endian, explicit value representations (DICOM PS3.5), 8 bits a sample.</summary>
internal sealed class PlainFile
{
    private readonly Dictionary<uint, byte[]> plain = [];
    private readonly List<Dictionary<uint, byte[]>> regions = [];

    public PlainFile(params string[] place)
    {
        byte[] bytes = File.ReadAllBytes(Path.Combine([SampleFolder.Path!, .. place]));
        Read(bytes, 132, bytes.Length, plain, 0);
        Assert.StartsWith("1.2.840.10008.1.2.1", Encoding.ASCII.GetString(plain[0x00020010]), StringComparison.Ordinal);
    }

    public int Width => Us(plain, 0x00280011);

    public int Height => Us(plain, 0x00280010);

    public IReadOnlyList<ImageFrame> Frames()
    {
        int channels = Us(plain, 0x00280002);
        int size = Width * Height * channels;
        byte[] pixels = plain[0x7FE00010];
        return [.. Enumerable.Range(0, pixels.Length / size).Select(i => new ImageFrame(Width, Height, channels, pixels.AsMemory(i * size, size)))];
    }

    public IReadOnlyList<CalibratedRegion> Regions() =>
    [
        .. regions.Select(static r => new CalibratedRegion(
            (RegionFormat)Us(r, 0x00186012), (RegionContent)Us(r, 0x00186014), Ul(r, 0x00186018), Ul(r, 0x0018601A), Ul(r, 0x0018601C), Ul(r, 0x0018601E),
            (RegionUnit)Us(r, 0x00186024), (RegionUnit)Us(r, 0x00186026), Fd(r, 0x0018602C) ?? 0, Fd(r, 0x0018602E) ?? 0,
            r.ContainsKey(0x00186020) ? Ul(r, 0x00186020) : null, r.ContainsKey(0x00186022) ? Ul(r, 0x00186022) : null, Fd(r, 0x00186028), Fd(r, 0x0018602A))),
    ];

    private void Read(byte[] bytes, int from, int to, Dictionary<uint, byte[]> into, int depth)
    {
        int at = from;
        while (at + 8 <= to)
        {
            uint tag = ((uint)BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at)) << 16) | BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at + 2));
            string vr = Encoding.ASCII.GetString(bytes, at + 4, 2);
            bool isLong = vr is "OB" or "OW" or "OF" or "SQ" or "UT" or "UN" or "UC" or "UR" or "OD" or "OL";
            uint length = isLong ? BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at + 8)) : BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at + 6));
            at += isLong ? 12 : 8;
            if (vr == "SQ")
            {
                at = Items(bytes, at, length == uint.MaxValue ? to : at + (int)length, length == uint.MaxValue, tag, depth);
                continue;
            }

            into[tag] = bytes[at..(at + (int)length)];
            at += (int)length;
        }
    }

    private int Items(byte[] bytes, int from, int to, bool open, uint sequence, int depth)
    {
        int at = from;
        while (at + 8 <= to)
        {
            uint tag = ((uint)BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at)) << 16) | BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at + 2));
            uint length = BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at + 4));
            at += 8;
            if (tag == 0xFFFEE0DD)
            {
                break;
            }

            int end = length == uint.MaxValue ? EndOfItem(bytes, at) : at + (int)length;
            Dictionary<uint, byte[]> item = [];
            Read(bytes, at, end, item, depth + 1);
            if (sequence == 0x00186011 && depth == 0)
            {
                regions.Add(item);
            }

            at = length == uint.MaxValue ? end + 8 : end;
        }

        return open ? at : to;
    }

    // The regions hold no sequences of their own: the first end mark is theirs.
    private static int EndOfItem(byte[] bytes, int from)
    {
        int at = from;
        while (BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at)) != 0xE00DFFFE)
        {
            at += 2;
        }

        return at;
    }

    private static int Us(Dictionary<uint, byte[]> set, uint tag) => BinaryPrimitives.ReadUInt16LittleEndian(set[tag]);

    private static int Ul(Dictionary<uint, byte[]> set, uint tag) => BinaryPrimitives.ReadInt32LittleEndian(set[tag]);

    private static double? Fd(Dictionary<uint, byte[]> set, uint tag) => set.TryGetValue(tag, out byte[]? value) ? BinaryPrimitives.ReadDoubleLittleEndian(value) : null;
}
