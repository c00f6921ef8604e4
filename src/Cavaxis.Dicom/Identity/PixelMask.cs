using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Dicom.Identity;

/// <summary>Which pixels of every frame are blackened, because words stand there.</summary>
public sealed record PixelMask
{
    private PixelMask(bool isOutside, int left, int top, int right, int bottom) => (IsOutsideRegions, Left, Top, Right, Bottom) = (isOutside, left, top, right, bottom);

    /// <summary>Everything outside the calibrated regions of the file.</summary>
    public static PixelMask OutsideRegions { get; } = new(true, 0, 0, 0, 0);

    /// <summary>True for everything outside the calibrated regions.</summary>
    public bool IsOutsideRegions { get; }

    /// <summary>First column blackened.</summary>
    public int Left { get; }

    /// <summary>First row blackened.</summary>
    public int Top { get; }

    /// <summary>Last column blackened.</summary>
    public int Right { get; }

    /// <summary>Last row blackened.</summary>
    public int Bottom { get; }

    /// <summary>A rectangle.</summary>
    /// <param name="left">First column, from 0.</param>
    /// <param name="top">First row, from 0.</param>
    /// <param name="width">Columns, 1 or more.</param>
    /// <param name="height">Rows, 1 or more.</param>
    /// <returns>The mask; what lies outside the frame is no fault.</returns>
    /// <exception cref="InputFaultException">A number is outside its bounds.</exception>
    public static PixelMask Rectangle(int left, int top, int width, int height)
    {
        const string Remedy = "Give the rectangle as left,top,width,height in pixels of the frame.";
        return new PixelMask(
            false,
            (int)Require.InRange(left, 0, ImageFrame.LongestEdge, "mask.left", Remedy),
            (int)Require.InRange(top, 0, ImageFrame.LongestEdge, "mask.top", Remedy),
            left + (int)Require.InRange(width, 1, ImageFrame.LongestEdge, "mask.width", Remedy) - 1,
            top + (int)Require.InRange(height, 1, ImageFrame.LongestEdge, "mask.height", Remedy) - 1);
    }

    /// <summary>True where a pixel is blackened.</summary>
    /// <param name="x">Column.</param>
    /// <param name="y">Row.</param>
    /// <param name="regions">Calibrated regions of the file.</param>
    public bool Covers(int x, int y, IReadOnlyList<CalibratedRegion> regions)
    {
        ArgumentNullException.ThrowIfNull(regions);
        return IsOutsideRegions ? !regions.Any(r => r.Holds(x, y)) : x >= Left && x <= Right && y >= Top && y <= Bottom;
    }
}
