using System.Globalization;
using System.Text;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>
/// Reads a folder of uncompressed little-endian CT slices (PS3.5 7.1.2, 7.1.3) for the tests of the pure room, which has no reader of its own.
/// It takes what the open scans need and nothing else.
/// </summary>
internal static class PlainSeries
{
    private const string Implicit = "1.2.840.10008.1.2";

    public static ScanVolume Read(string folder)
    {
        List<Slice> slices = [.. Directory.GetFiles(folder, "*.dcm").Select(ReadSlice).OrderBy(static s => s.Position.Z)];
        Slice first = slices[0];
        short[] values = [.. slices.SelectMany(static s => s.Values)];
        Vector3D step = (slices[^1].Position - first.Position) / (slices.Count - 1);
        return new ScanVolume(first.Columns, first.Rows, slices.Count, values, first.Position, first.ColumnStep, first.RowStep, step);
    }

    private static Slice ReadSlice(string file)
    {
        byte[] bytes = File.ReadAllBytes(file);
        Dictionary<uint, byte[]> found = [];
        bool plain = false;
        for (int at = 132; at + 8 <= bytes.Length;)
        {
            uint tag = ((uint)BitConverter.ToUInt16(bytes, at) << 16) | BitConverter.ToUInt16(bytes, at + 2);
            string kind = Encoding.ASCII.GetString(bytes, at + 4, 2);
            bool named = tag >> 16 == 2 || !plain;
            bool wide = kind is "OB" or "OW" or "SQ" or "UN" or "UT" or "OF";
            long length = !named ? BitConverter.ToUInt32(bytes, at + 4) : wide ? BitConverter.ToUInt32(bytes, at + 8) : BitConverter.ToUInt16(bytes, at + 6);
            at += named && wide ? 12 : 8;
            if (length == uint.MaxValue)
            {
                at = bytes.AsSpan(at).IndexOf(new byte[] { 0xfe, 0xff, 0xdd, 0xe0 }) + at + 8;
                continue;
            }

            found.TryAdd(tag, bytes[at..(int)(at + length)]);
            at += (int)length;
            plain |= tag == 0x00020010 && Text(found[tag]) == Implicit;
        }

        double[] way = Numbers(found[0x00200037]);
        double[] place = Numbers(found[0x00200032]);
        double[] spacing = Numbers(found[0x00280030]);
        double shift = Numbers(found[0x00281052])[0];
        double slope = Numbers(found[0x00281053])[0];
        bool signed = BitConverter.ToUInt16(found[0x00280103]) == 1;
        byte[] pixels = found[0x7fe00010];
        int columns = BitConverter.ToUInt16(found[0x00280011]);
        int rows = BitConverter.ToUInt16(found[0x00280010]);
        short[] values = [.. Enumerable.Range(0, columns * rows).Select(n =>
            (short)Math.Round(((signed ? BitConverter.ToInt16(pixels, 2 * n) : BitConverter.ToUInt16(pixels, 2 * n)) * slope) + shift))];
        return new Slice(
            new(place[0], place[1], place[2]), spacing[1] * new Vector3D(way[0], way[1], way[2]), spacing[0] * new Vector3D(way[3], way[4], way[5]), columns, rows, values);
    }

    private static string Text(byte[] value) => Encoding.ASCII.GetString(value).Trim('\0', ' ');

    private static double[] Numbers(byte[] value) => [.. Text(value).Split('\\').Select(static n => double.Parse(n, CultureInfo.InvariantCulture))];

    private sealed record Slice(Vector3D Position, Vector3D ColumnStep, Vector3D RowStep, int Columns, int Rows, short[] Values);
}
