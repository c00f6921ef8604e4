using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Dicom.Hosting;
using Cavaxis.Dicom.Reading;

namespace Cavaxis.Dicom.Series;

/// <summary>Slices that lie parallel, evenly spaced and one above the other, sorted along their normal.</summary>
internal sealed class SliceStack
{
    /// <summary>Part of the step by which a slice may be out of its place: positions are written with few digits.</summary>
    private const double EvenWithin = 0.02;

    private const double SameDirection = 1e-3;

    private SliceStack(IReadOnlyList<DicomFile> slices, Vector3D step) => (Slices, Step) = (slices, step);

    /// <summary>The slices, sorted.</summary>
    public IReadOnlyList<DicomFile> Slices { get; }

    /// <summary>From a slice to the next, mm.</summary>
    public Vector3D Step { get; }

    /// <summary>Sorts slices and looks whether they make a volume.</summary>
    /// <exception cref="Quantities.Faults.InputFaultException">They are of several series, unlike, doubled, missing or unevenly spaced.</exception>
    public static SliceStack Of(string folder, IReadOnlyList<DicomFile> files)
    {
        const string OneSeries = "Put the slices of one series, and only those, into a folder.";
        int series = files.Select(static f => f.Data.Text(0x0020_000E)).Distinct().Count();
        if (series > 1)
        {
            throw FileFault.Malformed(folder, Text($"slices of {series} series"), "slices of one series", OneSeries);
        }

        if (files.Count < 2)
        {
            throw FileFault.Malformed(folder, Text($"{files.Count} slice"), "2 or more slices of one series", OneSeries);
        }

        DicomFile first = files[0];
        DicomFile? unlike = files.FirstOrDefault(f => !IsLike(first, f));
        if (unlike is not null)
        {
            throw FileFault.Malformed(
                folder, $"{FileFault.Named(unlike.Path)} differs from {FileFault.Named(first.Path)} in size, spacing, orientation or frames", "slices of one size, spacing and orientation, each with its place", OneSeries);
        }

        (Vector3D row, Vector3D column) = first.Header.Orientation!.Value;
        Vector3D normal = row.Cross(column).Unit;
        DicomFile[] sorted = [.. files.OrderBy(f => f.Header.Position!.Value.Dot(normal)).ThenBy(static f => f.Path, StringComparer.Ordinal)];
        RequireEven(folder, sorted, normal);
        Vector3D step = (sorted[^1].Header.Position!.Value - sorted[0].Header.Position!.Value) / (sorted.Length - 1);
        for (int i = 0; i < sorted.Length; i++)
        {
            double off = (sorted[i].Header.Position!.Value - (sorted[0].Header.Position!.Value + (i * step))).Length;
            if (off > Math.Max(EvenWithin * step.Length, 0.05) * 2)
            {
                throw FileFault.Malformed(folder, Text($"slice {i + 1} lies {off:0.##} mm beside the line of the others"), "slices one above the other", OneSeries);
            }
        }

        return new SliceStack(sorted, step);
    }

    private static void RequireEven(string folder, DicomFile[] sorted, Vector3D normal)
    {
        double[] gaps = [.. sorted.Zip(sorted.Skip(1), (a, b) => (b.Header.Position!.Value - a.Header.Position!.Value).Dot(normal))];
        double usual = gaps.Order().ElementAt(gaps.Length / 2);
        for (int i = 0; i < gaps.Length; i++)
        {
            if (gaps[i] < 1e-3)
            {
                throw FileFault.Malformed(folder, Text($"{FileFault.Named(sorted[i].Path)} and {FileFault.Named(sorted[i + 1].Path)} lie in one place"), "each slice once", "Leave out the doubled slices, or the second reconstruction.");
            }

            if (Math.Abs(gaps[i] - usual) <= Math.Max(EvenWithin * usual, 0.01))
            {
                continue;
            }

            double times = gaps[i] / usual;
            bool isMissing = Math.Round(times) >= 2 && Math.Abs(times - Math.Round(times)) < EvenWithin * Math.Round(times);
            throw isMissing
                ? FileFault.Malformed(folder, Text($"{Math.Round(times) - 1} slices missing after {FileFault.Named(sorted[i].Path)}"), "every slice of the series", "Export the whole series once more.")
                : FileFault.Malformed(folder, Text($"{gaps[i]:0.###} mm after {FileFault.Named(sorted[i].Path)}, else {usual:0.###} mm"), "slices at one spacing", "Choose a reconstruction with even spacing.");
        }
    }

    private static bool IsLike(DicomFile first, DicomFile other) =>
        first.Header is { Orientation: (Vector3D row, Vector3D column), PixelSpacing: (double down, double along) } h
        && other.Header is { Orientation: (Vector3D otherRow, Vector3D otherColumn), PixelSpacing: (double otherDown, double otherAlong), Position: not null, Frames: 1 } o
        && h.Columns == o.Columns && h.Rows == o.Rows
        && (row - otherRow).Length < SameDirection && (column - otherColumn).Length < SameDirection
        && Math.Abs(row.Length - 1) < 0.01 && Math.Abs(column.Length - 1) < 0.01 && Math.Abs(row.Dot(column)) < 0.01
        && Math.Abs(down - otherDown) <= 1e-4 * down && Math.Abs(along - otherAlong) <= 1e-4 * along;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
