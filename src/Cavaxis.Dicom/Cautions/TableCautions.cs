using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Dicom.Headers;

namespace Cavaxis.Dicom.Cautions;

/// <summary>
/// Compares how the patient is said to have lain with how the slice is said to lie. An axial slice that is stored as the machine makes it
/// has rows along the machine's x; which way that is in the patient follows from head or feet first and from back or belly (PS3.3
/// C.7.3.1.1.2). A maker may turn the picture before it stores it, so the two can differ without an error: the position by itself
/// then still holds, and the sides must be seen in the picture.
/// </summary>
internal static class TableCautions
{
    private const double NearlyAlong = 0.9;

    /// <summary>The caution; null where both agree or the slice is not axial.</summary>
    public static ImageCaution? Of(ImageHeader header)
    {
        if (header.Orientation is not (Vector3D row, Vector3D column) || Math.Abs(row.Cross(column).Z) < NearlyAlong)
        {
            return null;
        }

        // Looking into the gantry from its front, columns rise to the right and rows downwards.
        (double x, double y)? expected = header.PatientPosition switch
        {
            "HFS" => (1, 1),
            "HFP" => (-1, -1),
            "FFS" => (-1, 1),
            "FFP" => (1, -1),
            _ => null,
        };
        if (expected is not (double alongRow, double alongColumn) || (row.X * alongRow > NearlyAlong && column.Y * alongColumn > NearlyAlong))
        {
            return null;
        }

        return new ImageCaution(
            "(0018,5100) Patient Position against (0020,0037) Image Orientation",
            string.Create(CultureInfo.InvariantCulture, $"{header.PatientPosition} with rows along {Shown(row)} and columns along {Shown(column)}"),
            "The picture as stored is turned against how the patient lay, or one of the two is wrong. Places are taken from the orientation.",
            "Check left and right on the picture: the liver on the patient's right, the aorta on the left of the spine.");
    }

    private static string Shown(Vector3D v) => string.Create(CultureInfo.InvariantCulture, $"({v.X:0.##}, {v.Y:0.##}, {v.Z:0.##})");
}
