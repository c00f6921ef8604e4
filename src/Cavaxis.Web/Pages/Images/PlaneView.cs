using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Web.Pointing;

namespace Cavaxis.Web.Pages.Images;

/// <summary>One of the three planes through a scan as it is shown: the place that is looked at is its middle.</summary>
/// <param name="Plane">Which plane.</param>
/// <param name="Key">Its identifier on the page.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Sides">What lies where in it.</param>
internal sealed record PlaneView(ViewPlane Plane, string Key, string Name, string Sides)
{
    /// <summary>Width and height that are shown, mm.</summary>
    public const double WidthMm = 200;

    /// <summary>Edge of a pixel, mm.</summary>
    public const double PixelMm = 0.625;

    /// <summary>Pixels along an edge.</summary>
    public const int Size = (int)(WidthMm / PixelMm);

    /// <summary>All three.</summary>
    public static IReadOnlyList<PlaneView> All { get; } =
    [
        new(ViewPlane.Axial, "axial", "Across", "patient's right on the left, front above"),
        new(ViewPlane.Coronal, "coronal", "From the front", "patient's right on the left, head above"),
        new(ViewPlane.Sagittal, "sagittal", "From the patient's left", "front on the left, head above"),
    ];

    /// <summary>Its middle.</summary>
    public static PicturePoint Middle { get; } = new(Size / 2.0, Size / 2.0);

    private ViewAxes Axes => ViewAxes.Of(Plane);

    /// <summary>The place in the patient at a point of the picture.</summary>
    /// <param name="through">The place in the middle, mm.</param>
    /// <param name="point">The point.</param>
    /// <returns>mm.</returns>
    public Vector3D At(Vector3D through, PicturePoint point) =>
        through + ((point.X - Middle.X) * PixelMm * Axes.Across) + ((point.Y - Middle.Y) * PixelMm * Axes.Down);

    /// <summary>The point of the picture at which a place is seen.</summary>
    /// <param name="through">The place in the middle, mm.</param>
    /// <param name="place">The place, mm.</param>
    /// <returns>The point; null where the place lies outside of the picture or more than 3 mm before or behind it.</returns>
    public PicturePoint? Of(Vector3D through, Vector3D place)
    {
        (Vector3D across, Vector3D down) = Axes;
        Vector3D from = place - through;
        PicturePoint at = new(Middle.X + (from.Dot(across) / PixelMm), Middle.Y + (from.Dot(down) / PixelMm));
        return Math.Abs(from.Dot(across.Cross(down))) <= 3 && IsIn(at.X) && IsIn(at.Y) ? at : null;
    }

    /// <summary>A place in words.</summary>
    /// <param name="place">mm.</param>
    public static string Words(Vector3D place) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Math.Abs(place.X):F0} mm {(place.X < 0 ? "right" : "left")}, {Math.Abs(place.Y):F0} mm {(place.Y < 0 ? "front" : "back")}, {Math.Abs(place.Z):F0} mm {(place.Z < 0 ? "down" : "up")} of the scanner's middle");

    /// <summary>A point on the edge is in the picture, whatever was rounded on the way.</summary>
    private static bool IsIn(double pixel) => pixel >= -1e-6 && pixel <= Size + 1e-6;
}
