using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Headers;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>Tells about images in words.</summary>
internal static class ImageText
{
    /// <summary>Writes a sheet.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="sheet">The sheet.</param>
    public static void Write(CommandOutput output, ImageInfoSheet sheet)
    {
        foreach (ImageSheet image in sheet.Images)
        {
            Write(output, image);
        }

        if (sheet.Series is { } series)
        {
            Write(output, series);
        }

        LeftOut(output, sheet.LeftOut);
    }

    /// <summary>Writes what was left out.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="files">The files.</param>
    public static void LeftOut(CommandOutput output, IReadOnlyList<LeftOutFile> files)
    {
        foreach (LeftOutFile file in files)
        {
            output.Wrapped("  - ", $"{file.File} was left out: {file.Reason}.");
        }
    }

    /// <summary>Writes what to beware of.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="cautions">The cautions.</param>
    public static void Cautions(CommandOutput output, IReadOnlyList<ImageCaution> cautions)
    {
        foreach (ImageCaution caution in cautions)
        {
            output.Wrapped("  ! ", $"{caution.Field}: {caution.Found.TrimEnd('.')}. {caution.Meaning} {caution.Remedy}");
        }
    }

    private static void Write(CommandOutput output, ImageSheet image)
    {
        output.Line($"{image.File}: {Words(image.Kind)}");
        if (image.Kind != ImageKind.NoPicture)
        {
            string time = image.FrameTimeMs is double ms ? string.Create(CultureInfo.InvariantCulture, $", {ms:0.##} ms from one to the next") : string.Empty;
            string frames = image.Frames == 1 ? "1 frame" : string.Create(CultureInfo.InvariantCulture, $"{image.Frames} frames{time}");
            output.Wrapped("  ", string.Create(CultureInfo.InvariantCulture, $"{image.Columns} × {image.Rows} pixels, {frames}, {image.Colours} of {image.BitsStored} bits; {image.Encoding}"));
        }

        if (image is { ColumnSpacingMm: double along, RowSpacingMm: double down })
        {
            output.Wrapped("  ", string.Create(CultureInfo.InvariantCulture, $"pixels {along:0.####} × {down:0.####} mm"));
        }

        for (int i = 0; i < image.Regions.Count; i++)
        {
            CalibratedRegion r = image.Regions[i];
            output.Wrapped("  ", string.Create(
                CultureInfo.InvariantCulture, $"region {i + 1}: {r.Format}, {r.Content}; columns {r.Left} to {r.Right}, rows {r.Top} to {r.Bottom}; {r.StepX:0.#####} {Words(r.UnitX)} by {r.StepY:0.#####} {Words(r.UnitY)} a pixel, as stated"));
        }

        Cautions(output, image.Cautions);
        output.Wrapped("  ", $"SHA-256 {image.Sha256}");
    }

    private static void Write(CommandOutput output, SeriesSheet series)
    {
        if (series.Fault is { } fault)
        {
            output.Wrapped(string.Empty, $"The slices make no volume: {fault}");
            return;
        }

        output.Line("A series of slices of computed tomography");
        output.Wrapped("  ", string.Create(
            CultureInfo.InvariantCulture,
            $"{series.Columns} × {series.Rows} × {series.Slices} voxels of {series.ColumnStepMm:0.####} × {series.RowStepMm:0.####} × {series.SliceStepMm:0.####} mm, {series.LeastHounsfield} to {series.GreatestHounsfield} Hounsfield units"));
        Cautions(output, series.Cautions);
        output.Wrapped("  ", $"SHA-256 over all slices {series.Sha256}");
    }

    private static string Words(ImageKind kind) => kind switch
    {
        ImageKind.UltrasoundStill => "ultrasound, one frame",
        ImageKind.UltrasoundLoop => "ultrasound, a loop",
        ImageKind.TomographySlice => "a slice of computed tomography",
        ImageKind.OtherPicture => "a picture of another kind",
        _ => "no picture",
    };

    private static string Words(RegionUnit unit) => unit switch
    {
        RegionUnit.None => "without a unit",
        RegionUnit.Centimetre => "cm",
        RegionUnit.Second => "s",
        RegionUnit.CentimetrePerSecond => "cm/s",
        _ => unit.ToString(),
    };
}
