using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Series;
using Cavaxis.Imaging.Volumes;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>The slices of a folder as one volume.</summary>
/// <param name="Columns">Voxels along a row; 0 where the slices make no volume.</param>
/// <param name="Rows">Voxels along a column.</param>
/// <param name="Slices">Slices.</param>
/// <param name="ColumnStepMm">Distance between columns, mm.</param>
/// <param name="RowStepMm">Distance between rows, mm.</param>
/// <param name="SliceStepMm">Distance between slices, mm.</param>
/// <param name="LeastHounsfield">Least value.</param>
/// <param name="GreatestHounsfield">Greatest value.</param>
/// <param name="PatientPosition">How the patient lay, as stated.</param>
/// <param name="Sha256">SHA-256 over the hashes of the slices.</param>
/// <param name="Cautions">What to beware of.</param>
/// <param name="Fault">Why the slices make no volume; null where they do.</param>
public sealed record SeriesSheet(
    int Columns,
    int Rows,
    int Slices,
    double ColumnStepMm,
    double RowStepMm,
    double SliceStepMm,
    int LeastHounsfield,
    int GreatestHounsfield,
    string PatientPosition,
    string Sha256,
    IReadOnlyList<ImageCaution> Cautions,
    InputFault? Fault)
{
    /// <summary>Of a series that was read.</summary>
    /// <param name="series">The series.</param>
    public static SeriesSheet Of(ScanSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        ScanVolume volume = series.Volume;
        (short least, short greatest) = (short.MaxValue, short.MinValue);
        foreach (short value in volume.Values)
        {
            (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
        }

        return new SeriesSheet(
            volume.Columns,
            volume.Rows,
            volume.Slices,
            volume.ColumnStep.Length,
            volume.RowStep.Length,
            volume.SliceStep.Length,
            least,
            greatest,
            InputFault.Shown(series.Header.PatientPosition),
            series.Sha256,
            series.Cautions,
            null);
    }

    /// <summary>Of slices that make no volume.</summary>
    /// <param name="fault">Why.</param>
    public static SeriesSheet None(InputFault fault) => new(0, 0, 0, 0, 0, 0, 0, 0, string.Empty, string.Empty, [], fault);
}
