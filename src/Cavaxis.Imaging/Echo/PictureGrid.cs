using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Echo;

/// <summary>Where the pixels of a picture lie.</summary>
/// <param name="Plane">Where the probe stands.</param>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
/// <param name="MmPerPixel">From pixel to pixel, the same both ways, mm.</param>
/// <param name="LeftMm">The first column's place to the right of the middle, mm.</param>
/// <param name="TopMm">The first row's depth, mm.</param>
public sealed record PictureGrid(ScanPlane Plane, int Width, int Height, double MmPerPixel, double LeftMm, double TopMm)
{
    /// <summary>The place of a pixel, in fractions.</summary>
    /// <param name="x">Column.</param>
    /// <param name="y">Row.</param>
    /// <returns>To the right and depth, mm.</returns>
    public (double Right, double Depth) Within(double x, double y) => (LeftMm + (x * MmPerPixel), TopMm + (y * MmPerPixel));

    /// <summary>The pixel of a place of the plane.</summary>
    /// <param name="right">To the right, mm.</param>
    /// <param name="depth">Depth, mm.</param>
    public (double X, double Y) Pixel(double right, double depth) => ((right - LeftMm) / MmPerPixel, (depth - TopMm) / MmPerPixel);

    /// <summary>The pixel over which a place of the scene lies, and how far out of the plane it is.</summary>
    /// <param name="place">mm.</param>
    public (double X, double Y, double OutMm) Pixel(Vector3D place)
    {
        (double right, double across, double depth) = Plane.Within(place);
        (double x, double y) = Pixel(right, depth);
        return (x, y, across);
    }
}
