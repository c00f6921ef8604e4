using System.Globalization;

namespace Cavaxis.EndToEnd.Tests.Images;

/// <summary>
/// A made-up scan as a folder of DICOM slices: a straight tube of 8 mm radius from the head into an ellipsoid (21 and 32 mm), and one of 10 mm that leaves it
/// 15 degrees to the back. Explicit little endian (PS3.5 7.1.2); names say nothing of the order of the slices.
/// </summary>
public static class WrittenScan
{
    /// <summary>Radius of the upper tube, mm.</summary>
    public const double UpperMm = 8;

    /// <summary>Radius of the lower tube, mm.</summary>
    public const double LowerMm = 10;

    /// <summary>How far the lower tube leans to the back, degrees.</summary>
    public const double LeanDeg = 15;

    /// <summary>Half-axes of the ellipsoid, mm.</summary>
    public const double WideMm = 21;

    /// <summary>Half of its length, mm.</summary>
    public const double TallMm = 32;

    private const int Side = 88;
    private const double PixelMm = 1.25;
    private const double SliceMm = 2;
    private const int Slices = 110;
    private const string Kind = "1.2.840.10008.5.1.4.1.1.2";

    /// <summary>Writes it.</summary>
    /// <param name="folder">A new folder.</param>
    /// <param name="contrastHu">How much brighter the vessel is than the tissue, HU.</param>
    /// <param name="noiseHu">Spread of a voxel, HU.</param>
    /// <param name="turnDeg">Turn of the slices about the axis from head to feet, degrees.</param>
    /// <param name="signed">Whether pixels are signed, or shifted by 1024.</param>
    public static void Write(string folder, double contrastHu, double noiseHu, double turnDeg, bool signed)
    {
        Directory.CreateDirectory(folder);
        (double sin, double cos) = Math.SinCos(turnDeg * Math.PI / 180);
        double half = PixelMm * (Side - 1) / 2;
        for (int k = 0; k < Slices; k++)
        {
            Random chance = new(k + 1);
            double z = 96 - (SliceMm * k);
            byte[] pixels = new byte[Side * Side * 2];
            for (int n = 0; n < Side * Side; n++)
            {
                double along = (n % Side * PixelMm) - half;
                double down = (n / Side * PixelMm) - half;
                double share = 1 / (1 + Math.Exp(2.1 * Distance((along * cos) - (down * sin), (along * sin) + (down * cos), z)));
                double noise = Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
                int hu = (int)Math.Round(45 + (contrastHu * share) + (noiseHu * noise));
                int stored = signed ? hu : Math.Max(0, hu + 1024);
                (pixels[2 * n], pixels[(2 * n) + 1]) = ((byte)stored, (byte)(stored >> 8));
            }

            string place = Texts((-half * cos) + (half * sin), (-half * sin) - (half * cos), z);
            File.WriteAllBytes(Path.Combine(folder, $"{(k * 37) % Slices:000}.dcm"), Slice(k, place, Texts(cos, sin, 0, -sin, cos, 0), pixels, signed));
        }
    }

    private static double Distance(double x, double y, double z)
    {
        double k0 = Math.Sqrt(((x * x) + (y * y)) / (WideMm * WideMm) + (z * z / (TallMm * TallMm)));
        double k1 = Math.Sqrt(((x * x) + (y * y)) / Math.Pow(WideMm, 4) + (z * z / Math.Pow(TallMm, 4)));
        double body = k1 < 1e-9 ? -WideMm : k0 * (k0 - 1) / k1;
        double upper = z > 10 ? Math.Sqrt((x * x) + (y * y)) - UpperMm : 100;
        (double sin, double cos) = Math.SinCos(LeanDeg * Math.PI / 180);
        double away = y * cos + ((z + 24) * sin);
        double lower = z < -18 ? Math.Sqrt((x * x) + (away * away)) - LowerMm : 100;
        return Math.Min(body, Math.Min(upper, lower));
    }

    private static string Texts(params double[] numbers) => string.Join('\\', numbers.Select(static n => n.ToString("0.########", CultureInfo.InvariantCulture)));

    private static byte[] Slice(int k, string place, string way, byte[] pixels, bool signed)
    {
        MemoryStream body = new();
        Text(body, 0x0008, 0x0008, "CS", "DERIVED\\SECONDARY\\AXIAL");
        Text(body, 0x0008, 0x0016, "UI", Kind);
        Text(body, 0x0008, 0x0018, "UI", $"2.25.77{k}");
        Text(body, 0x0008, 0x0060, "CS", "CT");
        Text(body, 0x0018, 0x0050, "DS", Texts(SliceMm));
        Text(body, 0x0018, 0x5100, "CS", "HFS");
        Text(body, 0x0020, 0x000D, "UI", "2.25.5");
        Text(body, 0x0020, 0x000E, "UI", "2.25.6");
        Text(body, 0x0020, 0x0013, "IS", (k + 1).ToString(CultureInfo.InvariantCulture));
        Text(body, 0x0020, 0x0032, "DS", place);
        Text(body, 0x0020, 0x0037, "DS", way);
        Text(body, 0x0020, 0x0052, "UI", "2.25.7");
        Short(body, 0x0028, 0x0002, 1);
        Text(body, 0x0028, 0x0004, "CS", "MONOCHROME2");
        Short(body, 0x0028, 0x0010, Side);
        Short(body, 0x0028, 0x0011, Side);
        Text(body, 0x0028, 0x0030, "DS", Texts(PixelMm, PixelMm));
        Short(body, 0x0028, 0x0100, 16);
        Short(body, 0x0028, 0x0101, 16);
        Short(body, 0x0028, 0x0102, 15);
        Short(body, 0x0028, 0x0103, signed ? 1 : 0);
        Text(body, 0x0028, 0x1052, "DS", signed ? "0" : "-1024");
        Text(body, 0x0028, 0x1053, "DS", "1");
        Blob(body, 0x7FE0, 0x0010, "OW", pixels);
        MemoryStream head = new();
        Blob(head, 0x0002, 0x0001, "OB", [0, 1]);
        Text(head, 0x0002, 0x0002, "UI", Kind);
        Text(head, 0x0002, 0x0003, "UI", $"2.25.77{k}");
        Text(head, 0x0002, 0x0010, "UI", "1.2.840.10008.1.2.1");
        Text(head, 0x0002, 0x0012, "UI", "2.25.4");
        MemoryStream file = new();
        file.Write(new byte[128]);
        file.Write("DICM"u8);
        Start(file, 0x0002, 0x0000, "UL");
        Number(file, 4, 2);
        Number(file, head.Length, 4);
        file.Write(head.ToArray());
        file.Write(body.ToArray());
        return file.ToArray();
    }

    private static void Text(MemoryStream to, int group, int element, string kind, string value)
    {
        string even = value.Length % 2 == 0 ? value : value + (kind == "UI" ? '\0' : ' ');
        Start(to, group, element, kind);
        Number(to, even.Length, 2);
        to.Write(System.Text.Encoding.ASCII.GetBytes(even));
    }

    private static void Short(MemoryStream to, int group, int element, int value)
    {
        Start(to, group, element, "US");
        Number(to, 2, 2);
        Number(to, value, 2);
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
        to.Write(System.Text.Encoding.ASCII.GetBytes(kind));
    }

    private static void Number(MemoryStream to, long value, int bytes)
    {
        for (int i = 0; i < bytes; i++)
        {
            to.WriteByte((byte)(value >> (8 * i)));
        }
    }
}
