using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Volumes;

/// <summary>
/// Hounsfield units between the voxels of a scan, by trilinear interpolation. Values are clipped before they are mixed, so that metal beside
/// a vessel does not lift what is read next to it.
/// </summary>
internal sealed class ScanSampler
{
    private readonly ScanVolume scan;
    private readonly Vector3D perI;
    private readonly Vector3D perJ;
    private readonly Vector3D perK;
    private readonly double low;
    private readonly double high;

    /// <summary>A sampler.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="low">Values below count as this, HU.</param>
    /// <param name="high">Values above count as this, HU.</param>
    public ScanSampler(ScanVolume scan, double low = short.MinValue, double high = short.MaxValue)
    {
        (this.scan, this.low, this.high) = (scan, low, high);
        Vector3D jk = scan.RowStep.Cross(scan.SliceStep);
        double voxel = scan.ColumnStep.Dot(jk);
        perI = jk / voxel;
        perJ = scan.SliceStep.Cross(scan.ColumnStep) / voxel;
        perK = scan.ColumnStep.Cross(scan.RowStep) / voxel;
    }

    /// <summary>True where a place lies between voxels of the scan.</summary>
    /// <param name="place">mm.</param>
    public bool Holds(Vector3D place)
    {
        Vector3D from = place - scan.Origin;
        double i = from.Dot(perI);
        double j = from.Dot(perJ);
        double k = from.Dot(perK);
        return i >= 0 && j >= 0 && k >= 0 && i <= scan.Columns - 1 && j <= scan.Rows - 1 && k <= scan.Slices - 1;
    }

    /// <summary>The value at a place; outside of the scan, that of its nearest face.</summary>
    /// <param name="place">mm.</param>
    /// <returns>HU.</returns>
    public double At(Vector3D place)
    {
        Vector3D from = place - scan.Origin;
        (int i, double x) = Split(from.Dot(perI), scan.Columns);
        (int j, double y) = Split(from.Dot(perJ), scan.Rows);
        (int k, double z) = Split(from.Dot(perK), scan.Slices);
        int row = scan.Columns;
        int slice = scan.Columns * scan.Rows;
        ReadOnlySpan<short> near = scan.Values[(((k * scan.Rows) + j) * scan.Columns + i)..];
        double front = Mix(Mix(Clip(near[0]), Clip(near[1]), x), Mix(Clip(near[row]), Clip(near[row + 1]), x), y);
        double back = Mix(Mix(Clip(near[slice]), Clip(near[slice + 1]), x), Mix(Clip(near[slice + row]), Clip(near[slice + row + 1]), x), y);
        return Mix(front, back, z);
    }

    private static double Mix(double a, double b, double share) => a + (share * (b - a));

    private static (int Index, double Share) Split(double at, int count)
    {
        double held = Math.Clamp(at, 0, count - 1);
        int index = Math.Min((int)held, count - 2);
        return (index, held - index);
    }

    private double Clip(short value) => value < low ? low : value > high ? high : value;
}
