using Cavaxis.Anatomy.Space;
using Cavaxis.Dicom.Elements;

namespace Cavaxis.Dicom.Headers;

/// <summary>Reads what a file says about its picture (PS3.3 C.7.6, C.8.2, C.8.5).</summary>
internal static class HeaderReader
{
    /// <summary>The header of a file.</summary>
    public static ImageHeader Read(string transferSyntax, DicomSet data)
    {
        int columns = data.Whole(0x0028_0011) ?? 0;
        int rows = data.Whole(0x0028_0010) ?? 0;
        bool isPicture = columns > 0 && rows > 0 && data.Find(0x7FE0_0010) is { Pixels.Lengths: [> 0, ..] or [_, _, ..] };
        int frames = isPicture ? Math.Max(1, data.Whole(0x0028_0008) ?? 1) : 0;
        string modality = data.Text(0x0008_0060);
        return new ImageHeader
        {
            Kind = !isPicture ? ImageKind.NoPicture
                : modality == "CT" ? ImageKind.TomographySlice
                : modality is not ("US" or "IVUS") ? ImageKind.OtherPicture
                : frames > 1 ? ImageKind.UltrasoundLoop : ImageKind.UltrasoundStill,
            Modality = modality,
            TransferSyntax = transferSyntax,
            Encoding = TransferSyntaxWords.Of(transferSyntax),
            Columns = columns,
            Rows = rows,
            Frames = frames,
            FrameTimeMs = FrameTime(data),
            Colours = data.Text(0x0028_0004),
            Samples = data.Whole(0x0028_0002) ?? 1,
            BitsStored = data.Whole(0x0028_0101) ?? data.Whole(0x0028_0100) ?? 0,
            IsSigned = data.Whole(0x0028_0103) == 1,
            PixelSpacing = data.Numbers(0x0028_0030) is [double row, double column] ? (row, column) : null,
            SliceThicknessMm = data.Number(0x0018_0050),
            Position = data.Numbers(0x0020_0032) is [double x, double y, double z] ? new Vector3D(x, y, z) : null,
            Orientation = data.Numbers(0x0020_0037) is [double a, double b, double c, double d, double e, double f] ? (new Vector3D(a, b, c), new Vector3D(d, e, f)) : null,
            PatientPosition = data.Text(0x0018_5100),
            RescaleSlope = data.Number(0x0028_1053) ?? 1,
            RescaleIntercept = data.Number(0x0028_1052) ?? 0,
            Window = data.Number(0x0028_1050) is double centre && data.Number(0x0028_1051) is double width and >= 1 ? (centre, width) : null,
        };
    }

    private static double? FrameTime(DicomSet data) =>
        data.Number(0x0018_1063) is double time and > 0 ? time
        : data.Numbers(0x0018_1065) is [_, _, ..] times && times.Skip(1).Average() is > 0 and double mean ? mean
        : (data.Number(0x0018_0040) ?? data.Number(0x0008_2144)) is double rate and > 0 ? 1000 / rate
        : null;
}
