using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Reading;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>An image: nothing of the person, and no identifier but the hash of the file.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Sha256">SHA-256 of the file.</param>
/// <param name="Kind">What it shows.</param>
/// <param name="Modality">Modality as stated.</param>
/// <param name="Encoding">Transfer syntax in words.</param>
/// <param name="TransferSyntax">Transfer syntax as its number.</param>
/// <param name="Columns">Columns, pixels.</param>
/// <param name="Rows">Rows, pixels.</param>
/// <param name="Frames">Frames.</param>
/// <param name="FrameTimeMs">Time from a frame to the next, ms.</param>
/// <param name="Colours">What samples stand for.</param>
/// <param name="BitsStored">Bits of a sample.</param>
/// <param name="ColumnSpacingMm">Distance between columns, mm; of a slice.</param>
/// <param name="RowSpacingMm">Distance between rows, mm; of a slice.</param>
/// <param name="Regions">Calibrated regions as stated.</param>
/// <param name="Cautions">What to beware of.</param>
public sealed record ImageSheet(
    string File,
    string Sha256,
    ImageKind Kind,
    string Modality,
    string Encoding,
    string TransferSyntax,
    int Columns,
    int Rows,
    int Frames,
    double? FrameTimeMs,
    string Colours,
    int BitsStored,
    double? ColumnSpacingMm,
    double? RowSpacingMm,
    IReadOnlyList<CalibratedRegion> Regions,
    IReadOnlyList<ImageCaution> Cautions)
{
    /// <summary>Of a file that was read.</summary>
    /// <param name="file">The file.</param>
    public static ImageSheet Of(DicomFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        ImageHeader h = file.Header;
        return new ImageSheet(
            InputFault.Shown(Path.GetFileName(file.Path)),
            file.Sha256,
            h.Kind,
            InputFault.Shown(h.Modality),
            InputFault.Shown(h.Encoding),
            InputFault.Shown(h.TransferSyntax),
            h.Columns,
            h.Rows,
            h.Frames,
            h.FrameTimeMs,
            InputFault.Shown(h.Colours),
            h.BitsStored,
            h.PixelSpacing?.ColumnMm,
            h.PixelSpacing?.RowMm,
            file.Regions,
            file.Cautions);
    }
}
