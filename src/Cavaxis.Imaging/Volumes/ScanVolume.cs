using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Volumes;

/// <summary>
/// A stack of parallel computed-tomography slices in Hounsfield units, evenly spaced, placed in the patient's coordinates (mm; x to the
/// patient's left, y to the back, z to the head: DICOM PS3.3 C.7.6.2.1.1). Voxel (i, j, k) is column i, row j, slice k.
/// </summary>
public sealed class ScanVolume
{
    /// <summary>Most voxels that are held: 512 × 512 × 1200.</summary>
    public const long MostVoxels = 512L * 512 * 1200;

    private readonly short[] values;

    /// <summary>A volume.</summary>
    /// <param name="columns">Voxels along a row, 2 or more.</param>
    /// <param name="rows">Voxels along a column, 2 or more.</param>
    /// <param name="slices">Slices, 2 or more.</param>
    /// <param name="values">Hounsfield units, column fastest, then row, then slice; the caller must not change them afterwards.</param>
    /// <param name="origin">Centre of voxel (0, 0, 0), mm.</param>
    /// <param name="columnStep">From a voxel to the next in its row, mm: direction and spacing.</param>
    /// <param name="rowStep">From a voxel to the next in its column, mm.</param>
    /// <param name="sliceStep">From a voxel to the same of the next slice, mm.</param>
    /// <exception cref="InputFaultException">A size is outside its bounds, the number of values is another, or the steps do not span space.</exception>
    public ScanVolume(int columns, int rows, int slices, short[] values, Vector3D origin, Vector3D columnStep, Vector3D rowStep, Vector3D sliceStep)
    {
        ArgumentNullException.ThrowIfNull(values);
        const string Remedy = "Give one series of parallel slices of one size.";
        Columns = (int)Require.InRange(columns, 2, 4096, "volume.columns", Remedy);
        Rows = (int)Require.InRange(rows, 2, 4096, "volume.rows", Remedy);
        Slices = (int)Require.InRange(slices, 2, 4096, "volume.slices", Remedy);
        long voxels = (long)columns * rows * slices;
        _ = Require.InRange(voxels, 8, MostVoxels, "volume.voxels", "Leave out slices that do not show the vessels.");
        if (values.Length != voxels)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.WrongLength, "volume.values", values.Length.ToString(CultureInfo.InvariantCulture), string.Create(CultureInfo.InvariantCulture, $"{voxels} values"), Remedy));
        }

        double spanned = Math.Abs(columnStep.Cross(rowStep).Dot(sliceStep));
        _ = Require.InRange(spanned, 1e-6, 1e6, "volume.voxelMm3", "Give slices that are not in one plane, with their spacing in mm.");
        (this.values, Origin, ColumnStep, RowStep, SliceStep) = (values, origin, columnStep, rowStep, sliceStep);
    }

    /// <summary>Voxels along a row.</summary>
    public int Columns { get; }

    /// <summary>Voxels along a column.</summary>
    public int Rows { get; }

    /// <summary>Slices.</summary>
    public int Slices { get; }

    /// <summary>Centre of voxel (0, 0, 0), mm.</summary>
    public Vector3D Origin { get; }

    /// <summary>From a voxel to the next in its row, mm.</summary>
    public Vector3D ColumnStep { get; }

    /// <summary>From a voxel to the next in its column, mm.</summary>
    public Vector3D RowStep { get; }

    /// <summary>From a voxel to the same of the next slice, mm.</summary>
    public Vector3D SliceStep { get; }

    /// <summary>Hounsfield units, column fastest, then row, then slice.</summary>
    public ReadOnlySpan<short> Values => values;

    /// <summary>Hounsfield unit of a voxel.</summary>
    /// <param name="i">Column.</param>
    /// <param name="j">Row.</param>
    /// <param name="k">Slice.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voxel is outside the volume.</exception>
    public short this[int i, int j, int k] => i >= 0 && i < Columns && j >= 0 && j < Rows && k >= 0 && k < Slices
        ? values[((((long)k * Rows) + j) * Columns) + i]
        : throw new ArgumentOutOfRangeException(nameof(i), string.Create(CultureInfo.InvariantCulture, $"Voxel ({i}, {j}, {k}) is outside {Columns} × {Rows} × {Slices}."));

    /// <summary>Where a voxel lies in the patient, mm. Fractions of voxels are taken.</summary>
    /// <param name="i">Column.</param>
    /// <param name="j">Row.</param>
    /// <param name="k">Slice.</param>
    public Vector3D Place(double i, double j, double k) => Origin + (i * ColumnStep) + (j * RowStep) + (k * SliceStep);

    /// <summary>The voxel, in fractions, at a place of the patient.</summary>
    /// <param name="place">mm.</param>
    /// <returns>Column, row and slice; may lie outside.</returns>
    public (double I, double J, double K) Voxel(Vector3D place)
    {
        Vector3D from = place - Origin;
        Vector3D jk = RowStep.Cross(SliceStep);
        double volume = ColumnStep.Dot(jk);
        return (
            from.Dot(jk) / volume,
            from.Dot(SliceStep.Cross(ColumnStep)) / volume,
            from.Dot(ColumnStep.Cross(RowStep)) / volume);
    }
}
