namespace Cavaxis.Imaging.Frames;

/// <summary>
/// A part of a frame whose pixels stand for lengths, times or speeds, as the file states it (DICOM PS3.3 C.8.5.5, Sequence of Ultrasound
/// Regions). Taken over as found: whether it can be right is for whoever measures in it.
/// </summary>
/// <param name="Format">What its axes stand for.</param>
/// <param name="Content">What it shows.</param>
/// <param name="Left">First column inside, pixels from 0.</param>
/// <param name="Top">First row inside.</param>
/// <param name="Right">Last column inside, as stated: the standard counts it in.</param>
/// <param name="Bottom">Last row inside, as stated.</param>
/// <param name="UnitX">Unit along a row.</param>
/// <param name="UnitY">Unit along a column.</param>
/// <param name="StepX">Physical step from one column to the next, in <paramref name="UnitX"/>.</param>
/// <param name="StepY">Physical step from one row to the next, in <paramref name="UnitY"/>.</param>
/// <param name="ReferenceX">Column of the reference pixel, from <paramref name="Left"/>; null where none is stated.</param>
/// <param name="ReferenceY">Row of the reference pixel, from <paramref name="Top"/>; in a spectrum the baseline.</param>
/// <param name="ReferenceValueX">Physical value at the reference column; null where none is stated: zero is meant.</param>
/// <param name="ReferenceValueY">Physical value at the reference row; null where none is stated: zero is meant.</param>
/// <param name="Flags">Region Flags (0018,6016) as stated.</param>
public sealed record CalibratedRegion(
    RegionFormat Format,
    RegionContent Content,
    int Left,
    int Top,
    int Right,
    int Bottom,
    RegionUnit UnitX,
    RegionUnit UnitY,
    double StepX,
    double StepY,
    int? ReferenceX = null,
    int? ReferenceY = null,
    double? ReferenceValueX = null,
    double? ReferenceValueY = null,
    uint Flags = 0)
{
    /// <summary>True where a pixel lies inside, edges included.</summary>
    /// <param name="x">Column.</param>
    /// <param name="y">Row.</param>
    public bool Holds(double x, double y) => x >= Left && x <= Right && y >= Top && y <= Bottom;
}
