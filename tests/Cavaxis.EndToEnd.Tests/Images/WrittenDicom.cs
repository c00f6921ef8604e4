using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Cavaxis.EndToEnd.Tests.Images;

/// <summary>Writes small invented ultrasound images as DICOM, explicit little endian (PS3.5 7.1.2, PS3.10 7.1): a dark disc in grey, with a scale or without.</summary>
public static class WrittenDicom
{
    /// <summary>Columns and rows of a frame.</summary>
    public const int Side = 200;

    /// <summary>Centre of the disc, pixels.</summary>
    public const double Centre = 99.5;

    private const string Still = "1.2.840.10008.5.1.4.1.1.6.1";
    private const string Slice = "1.2.840.10008.5.1.4.1.1.2";
    private const string Loop = "1.2.840.10008.5.1.4.1.1.3.1";

    /// <summary>An image.</summary>
    /// <param name="radii">Radius of the disc on each frame, pixels; one for a still.</param>
    /// <param name="cmPerPixel">Scale of its one region; null for a file without calibration.</param>
    /// <param name="patient">Name in the file, which must not be found anywhere afterwards.</param>
    /// <returns>The bytes of the file.</returns>
    public static byte[] Ultrasound(IReadOnlyList<double> radii, double? cmPerPixel, string patient)
    {
        string kind = radii.Count > 1 ? Loop : Still;
        MemoryStream body = new();
        Text(body, 0x0008, 0x0016, "UI", kind);
        Text(body, 0x0008, 0x0018, "UI", "2.25.1");
        Text(body, 0x0008, 0x0020, "DA", "20000101");
        Text(body, 0x0008, 0x0060, "CS", "US");
        Text(body, 0x0010, 0x0010, "PN", patient);
        Text(body, 0x0010, 0x0020, "LO", $"{patient}-NUMBER");
        if (cmPerPixel is double step)
        {
            MemoryStream region = new();
            Short(region, 0x0018, 0x6012, 1);
            Short(region, 0x0018, 0x6014, 1);
            Long(region, 0x0018, 0x6016, 0);
            Long(region, 0x0018, 0x6018, 0);
            Long(region, 0x0018, 0x601A, 0);
            Long(region, 0x0018, 0x601C, Side - 1);
            Long(region, 0x0018, 0x601E, Side - 1);
            Short(region, 0x0018, 0x6024, 3);
            Short(region, 0x0018, 0x6026, 3);
            Real(region, 0x0018, 0x602C, step);
            Real(region, 0x0018, 0x602E, step);
            Sequence(body, 0x0018, 0x6011, region.ToArray());
        }

        Text(body, 0x0018, 0x1063, "DS", "200");
        Text(body, 0x0020, 0x000D, "UI", "2.25.2");
        Text(body, 0x0020, 0x000E, "UI", "2.25.3");
        Short(body, 0x0028, 0x0002, 1);
        Text(body, 0x0028, 0x0004, "CS", "MONOCHROME2");
        Text(body, 0x0028, 0x0008, "IS", radii.Count.ToString(CultureInfo.InvariantCulture));
        Short(body, 0x0028, 0x0010, Side);
        Short(body, 0x0028, 0x0011, Side);
        Short(body, 0x0028, 0x0100, 8);
        Short(body, 0x0028, 0x0101, 8);
        Short(body, 0x0028, 0x0102, 7);
        Short(body, 0x0028, 0x0103, 0);
        Blob(body, 0x7FE0, 0x0010, "OB", [.. radii.SelectMany(Frame)]);
        return File(kind, "2.25.1", body);
    }

    /// <summary>
    /// A series of tomography across: an upper vein of 20 mm, an ellipsoid as atrium, a lower vein of 24 mm, all upright, blood 200 HU in tissue of 50 HU with a little noise.
    /// </summary>
    /// <returns>The files from the head to the feet.</returns>
    public static IEnumerable<byte[]> Tomography()
    {
        const int Across = 96;
        const double PixelMm = 1.25;
        Random noise = new(7);
        for (int slice = 0; slice < 90; slice++)
        {
            double z = 89 - (2 * slice);
            byte[] pixels = new byte[2 * Across * Across];
            for (int i = 0; i < Across * Across; i++)
            {
                double x = ((i % Across) - (Across / 2.0)) * PixelMm;
                double y = ((i / Across) - (Across / 2.0)) * PixelMm;
                double atrium = Math.Sqrt((((x * x) + (y * y)) / (24 * 24)) + (z * z / (30 * 30)));
                double vein = Math.Sqrt((x * x) + (y * y)) - (z > 0 ? 10 : 12);
                double inside = Math.Clamp(0.5 - Math.Min(vein, 24 * (atrium - 1)), 0, 1);
                BinaryPrimitives.WriteInt16LittleEndian(pixels.AsSpan(2 * i), (short)(1050 + (150 * inside) + (10 * (noise.NextDouble() - 0.5))));
            }

            string place = z.ToString("0.0", CultureInfo.InvariantCulture);
            string uid = string.Create(CultureInfo.InvariantCulture, $"2.25.9.{slice + 1}");
            MemoryStream body = new();
            Text(body, 0x0008, 0x0016, "UI", Slice);
            Text(body, 0x0008, 0x0018, "UI", uid);
            Text(body, 0x0008, 0x0060, "CS", "CT");
            Text(body, 0x0010, 0x0010, "PN", "ZZNOBODY^INVENTED");
            Text(body, 0x0010, 0x0020, "LO", "ZZNOBODY-NUMBER");
            Text(body, 0x0018, 0x0050, "DS", "2");
            Text(body, 0x0018, 0x5100, "CS", "HFS");
            Text(body, 0x0020, 0x000D, "UI", "2.25.7");
            Text(body, 0x0020, 0x000E, "UI", "2.25.8");
            Text(body, 0x0020, 0x0013, "IS", (slice + 1).ToString(CultureInfo.InvariantCulture));
            Text(body, 0x0020, 0x0032, "DS", $"-60\\-60\\{place}");
            Text(body, 0x0020, 0x0037, "DS", "1\\0\\0\\0\\1\\0");
            Short(body, 0x0028, 0x0002, 1);
            Text(body, 0x0028, 0x0004, "CS", "MONOCHROME2");
            Short(body, 0x0028, 0x0010, Across);
            Short(body, 0x0028, 0x0011, Across);
            Text(body, 0x0028, 0x0030, "DS", "1.25\\1.25");
            Short(body, 0x0028, 0x0100, 16);
            Short(body, 0x0028, 0x0101, 16);
            Short(body, 0x0028, 0x0102, 15);
            Short(body, 0x0028, 0x0103, 0);
            Text(body, 0x0028, 0x1052, "DS", "-1000");
            Text(body, 0x0028, 0x1053, "DS", "1");
            Blob(body, 0x7FE0, 0x0010, "OW", pixels);
            yield return File(Slice, uid, body);
        }
    }

    private static byte[] File(string kind, string uid, MemoryStream body)
    {
        MemoryStream head = new();
        Blob(head, 0x0002, 0x0001, "OB", [0, 1]);
        Text(head, 0x0002, 0x0002, "UI", kind);
        Text(head, 0x0002, 0x0003, "UI", uid);
        Text(head, 0x0002, 0x0010, "UI", "1.2.840.10008.1.2.1");
        Text(head, 0x0002, 0x0012, "UI", "2.25.4");
        MemoryStream file = new();
        file.Write(new byte[128]);
        file.Write("DICM"u8);
        Long(file, 0x0002, 0x0000, (int)head.Length);
        file.Write(head.ToArray());
        file.Write(body.ToArray());
        return file.ToArray();
    }

    private static byte[] Frame(double radius)
    {
        byte[] pixels = new byte[Side * Side];
        for (int i = 0; i < pixels.Length; i++)
        {
            double distance = Math.Sqrt(Math.Pow((i % Side) - Centre, 2) + Math.Pow((i / Side) - Centre, 2));
            pixels[i] = (byte)(20 + (120 * Math.Clamp(distance - radius + 0.5, 0, 1)));
        }

        return pixels;
    }

    private static void Text(MemoryStream to, int group, int element, string kind, string value)
    {
        byte[] bytes = Encoding.ASCII.GetBytes(value.Length % 2 == 0 ? value : value + (kind == "UI" ? '\0' : ' '));
        Start(to, group, element, kind);
        Number(to, bytes.Length, 2);
        to.Write(bytes);
    }

    private static void Short(MemoryStream to, int group, int element, int value)
    {
        Start(to, group, element, "US");
        Number(to, 2, 2);
        Number(to, value, 2);
    }

    private static void Long(MemoryStream to, int group, int element, int value)
    {
        Start(to, group, element, "UL");
        Number(to, 4, 2);
        Number(to, value, 4);
    }

    private static void Real(MemoryStream to, int group, int element, double value)
    {
        Start(to, group, element, "FD");
        Number(to, 8, 2);
        byte[] bytes = new byte[8];
        BinaryPrimitives.WriteDoubleLittleEndian(bytes, value);
        to.Write(bytes);
    }

    private static void Sequence(MemoryStream to, int group, int element, byte[] item)
    {
        Start(to, group, element, "SQ");
        Number(to, 0, 2);
        Number(to, item.Length + 8, 4);
        Number(to, 0xFFFE, 2);
        Number(to, 0xE000, 2);
        Number(to, item.Length, 4);
        to.Write(item);
    }

    private static void Blob(MemoryStream to, int group, int element, string kind, byte[] bytes)
    {
        Start(to, group, element, kind);
        Number(to, 0, 2);
        Number(to, bytes.Length, 4);
        to.Write(bytes);
    }

    private static void Start(MemoryStream to, int group, int element, string kind)
    {
        Number(to, group, 2);
        Number(to, element, 2);
        to.Write(Encoding.ASCII.GetBytes(kind));
    }

    private static void Number(MemoryStream to, long value, int bytes)
    {
        for (int i = 0; i < bytes; i++)
        {
            to.WriteByte((byte)(value >> (8 * i)));
        }
    }
}
