using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Frames;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Pictures by which a person judges a traced axis: three planes through a place and the vessel laid straight. The centreline is yellow, the
/// wall green, landmarks red (proposed) or cyan (confirmed).
/// </summary>
public static class AxisPictures
{
    private const int LargestPixels = 2048;
    private static readonly (byte, byte, byte) LineColour = (255, 220, 0);
    private static readonly (byte, byte, byte) WallColour = (0, 220, 90);
    private static readonly (byte, byte, byte) ProposedColour = (255, 70, 70);
    private static readonly (byte, byte, byte) ConfirmedColour = (0, 220, 255);

    /// <summary>One plane through a place.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="plane">Which plane.</param>
    /// <param name="through">The place, mm; it is the middle of the picture.</param>
    /// <param name="window">Greys.</param>
    /// <param name="axis">The axis to draw; null for none.</param>
    /// <param name="widthMm">Width and height that are shown, mm.</param>
    /// <param name="pixelMm">Edge of a pixel, mm.</param>
    /// <returns>The picture, red-green-blue.</returns>
    /// <exception cref="InputFaultException">The picture would be empty or larger than 2048 pixels.</exception>
    public static ImageFrame Plane(ScanVolume scan, ViewPlane plane, Vector3D through, GreyWindow window, TracedAxis? axis, double widthMm = 160, double pixelMm = 0.5)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ArgumentNullException.ThrowIfNull(window);
        int size = (int)Require.InRange(Math.Round(widthMm / Require.InRange(pixelMm, 0.05, 10, "picture.pixelMm", "Give the edge of a pixel in mm.")), 8, LargestPixels, "picture.widthMm", "Show less or with larger pixels.");
        (Vector3D across, Vector3D down) = ViewAxes.Of(plane);
        ScanSampler sampler = new(scan);
        double middle = (size - 1) / 2.0;
        Canvas canvas = new(size, size, (x, y) =>
        {
            Vector3D at = through + ((x - middle) * pixelMm * across) + ((y - middle) * pixelMm * down);
            return sampler.Holds(at) ? window.Grey(sampler.At(at)) : (byte)0;
        });
        if (axis is not null)
        {
            Vector3D normal = ViewAxes.Of(plane).Through;
            (double X, double Y) Pixel(Vector3D at) => (middle + ((at - through).Dot(across) / pixelMm), middle + ((at - through).Dot(down) / pixelMm));
            Draw(canvas, axis, plane, at => Math.Abs((at - through).Dot(normal)), Pixel);
        }

        return canvas.Frame();
    }

    /// <summary>The vessel laid straight: its centreline is the middle column from head to feet.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="window">Greys.</param>
    /// <param name="azimuthDeg">Which way the columns look: 0 the patient's left on the right, 90 the back.</param>
    /// <param name="widthMm">Width that is shown, mm.</param>
    /// <param name="pixelMm">Edge of a pixel, mm.</param>
    /// <returns>The picture, red-green-blue.</returns>
    /// <exception cref="InputFaultException">The picture would be empty or larger than 2048 pixels.</exception>
    public static ImageFrame Straightened(ScanVolume scan, TracedAxis axis, GreyWindow window, double azimuthDeg = 0, double widthMm = 80, double pixelMm = 0.5)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ArgumentNullException.ThrowIfNull(axis);
        ArgumentNullException.ThrowIfNull(window);
        double pixel = Require.InRange(pixelMm, 0.05, 10, "picture.pixelMm", "Give the edge of a pixel in mm.");
        int width = (int)Require.InRange(Math.Round(widthMm / pixel), 8, LargestPixels, "picture.widthMm", "Show less or with larger pixels.");
        int height = (int)Require.InRange(Math.Round(axis.Line.LengthMm / pixel), 2, LargestPixels, "picture.lengthMm", "Show it with larger pixels.");
        (double sin, double cos) = Math.SinCos(azimuthDeg * Math.PI / 180);
        Vector3D look = new(cos, sin, 0);
        double middle = (width - 1) / 2.0;
        Vector3D[] sideways = [.. Enumerable.Range(0, height).Select(y => Square(look, axis.Line.Direction(y * pixel, 6)))];
        ScanSampler sampler = new(scan);
        Canvas canvas = new(width, height, (x, y) => window.Grey(sampler.At(axis.Line.At(y * pixel) + ((x - middle) * pixel * sideways[y]))));
        foreach (LumenSection section in axis.Sections)
        {
            double y = section.ArcMm / pixel;
            Vector3D aside = sideways[Math.Clamp((int)y, 0, height - 1)];
            double angle = Math.Atan2(aside.Dot(section.Upright), aside.Dot(section.Across));
            for (int side = 0; side < 2; side++)
            {
                int count = section.RadiiMm.Count;
                int ray = (((int)Math.Round((angle + (side * Math.PI)) / (2 * Math.PI) * count) % count) + count) % count;
                canvas.Mark(middle + ((side == 0 ? 1 : -1) * section.RadiiMm[ray] / pixel), y, WallColour);
            }
        }

        canvas.Line((middle, 0), (middle, height - 1), LineColour);
        foreach (AxisLandmark landmark in axis.Landmarks.Where(static l => l.IsThere))
        {
            canvas.Line((0, landmark.ArcMm / pixel), (width - 1.0, landmark.ArcMm / pixel), Colour(landmark));
        }

        return canvas.Frame();
    }

    private static void Draw(Canvas canvas, TracedAxis axis, ViewPlane plane, Func<Vector3D, double> away, Func<Vector3D, (double X, double Y)> pixel)
    {
        double near = 1.2;
        foreach (LumenSection section in axis.Sections)
        {
            Vector3D[] wall = [.. section.Wall()];
            for (int i = 0; i < wall.Length; i++)
            {
                if (away(wall[i]) <= near)
                {
                    (double x, double y) = pixel(wall[i]);
                    canvas.Mark(x, y, WallColour);
                }
            }
        }

        // On an upright plane the whole line is drawn as if seen through it; on an axial one only where it crosses.
        IReadOnlyList<Vector3D> points = axis.Line.Points;
        for (int i = 0; i + 1 < points.Count; i++)
        {
            if (plane != ViewPlane.Axial || away(points[i]) <= near)
            {
                canvas.Line(pixel(points[i]), pixel(points[i + 1]), LineColour);
            }
        }

        foreach (AxisLandmark landmark in axis.Landmarks.Where(l => l.IsThere && (plane != ViewPlane.Axial || away(l.Place) <= near)))
        {
            (double x, double y) = pixel(landmark.Place);
            canvas.Line((x - 6, y), (x + 6, y), Colour(landmark));
        }
    }

    private static (byte, byte, byte) Colour(AxisLandmark landmark) => landmark.Origin == LandmarkOrigin.Confirmed ? ConfirmedColour : ProposedColour;

    private static Vector3D Square(Vector3D look, Vector3D normal)
    {
        Vector3D square = look - (look.Dot(normal) * normal);
        return square.Length > 1e-3 ? square.Unit : new Vector3D(0, 0, 1).Cross(normal).Unit;
    }
}
