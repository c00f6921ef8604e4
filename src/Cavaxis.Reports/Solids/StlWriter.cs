using System.Buffers.Binary;
using System.Text;
using Cavaxis.Anatomy.Meshes;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Reports.Solids;

/// <summary>
/// A model as binary STL: 80 bytes of text, the number of triangles, and for each its unit vector outward and three corners as 32-bit
/// floats, in mm and the patient's own coordinates. The format has no units, colours or lines; it is for printers and other programs.
/// </summary>
public static class StlWriter
{
    private const int HeadBytes = 84;
    private const int TriangleBytes = 50;

    /// <summary>Writes the bodies; lines are left out.</summary>
    /// <param name="model">The model.</param>
    /// <returns>The file.</returns>
    public static byte[] Write(SolidModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        int count = model.Parts.Sum(static p => p.Surface.TriangleCount);
        byte[] file = new byte[HeadBytes + (TriangleBytes * count)];

        // Readers take a file that begins with "solid" for the format in words.
        byte[] head = Encoding.ASCII.GetBytes("Cavaxis, mm, x left y back z head. Not a certified medical device.");
        head.CopyTo(file, 0);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(80), count);
        int at = HeadBytes;
        foreach (SurfaceMesh surface in model.Parts.Select(static p => p.Surface))
        {
            for (int i = 0; i < surface.Corners.Length; i += 3)
            {
                (Vector3D a, Vector3D b, Vector3D c) = (surface.PointsMm[surface.Corners[i]], surface.PointsMm[surface.Corners[i + 1]], surface.PointsMm[surface.Corners[i + 2]]);
                Vector3D square = (b - a).Cross(c - a);
                Write(file, at, square.Length > 0 ? square.Unit : Vector3D.Zero);
                Write(file, at + 12, a);
                Write(file, at + 24, b);
                Write(file, at + 36, c);
                at += TriangleBytes;
            }
        }

        return file;
    }

    private static void Write(byte[] file, int at, Vector3D vector)
    {
        BinaryPrimitives.WriteSingleLittleEndian(file.AsSpan(at), (float)vector.X);
        BinaryPrimitives.WriteSingleLittleEndian(file.AsSpan(at + 4), (float)vector.Y);
        BinaryPrimitives.WriteSingleLittleEndian(file.AsSpan(at + 8), (float)vector.Z);
    }
}
