using Cavaxis.Anatomy.Space;

namespace Cavaxis.Dicom.Headers;

/// <summary>What the file says about its picture; nothing about the person. As found: whether it can be right is said by the cautions.</summary>
public sealed record ImageHeader
{
    /// <summary>What it shows.</summary>
    public required ImageKind Kind { get; init; }

    /// <summary>Modality (0008,0060), such as US or CT; empty where none is stated.</summary>
    public required string Modality { get; init; }

    /// <summary>Transfer syntax, as its number in the standard (PS3.6 A).</summary>
    public required string TransferSyntax { get; init; }

    /// <summary>Transfer syntax in words.</summary>
    public required string Encoding { get; init; }

    /// <summary>Columns of the picture, pixels.</summary>
    public required int Columns { get; init; }

    /// <summary>Rows of the picture, pixels.</summary>
    public required int Rows { get; init; }

    /// <summary>Frames; 0 where there is no picture.</summary>
    public required int Frames { get; init; }

    /// <summary>Time from a frame to the next, ms; null where none is stated.</summary>
    public double? FrameTimeMs { get; init; }

    /// <summary>Photometric interpretation (0028,0004).</summary>
    public required string Colours { get; init; }

    /// <summary>Samples of a pixel.</summary>
    public required int Samples { get; init; }

    /// <summary>Bits of a sample that are used.</summary>
    public required int BitsStored { get; init; }

    /// <summary>True where samples have a sign.</summary>
    public required bool IsSigned { get; init; }

    /// <summary>Distance between rows and between columns, mm (0028,0030); null where none is stated.</summary>
    public (double RowMm, double ColumnMm)? PixelSpacing { get; init; }

    /// <summary>Thickness of a slice, mm.</summary>
    public double? SliceThicknessMm { get; init; }

    /// <summary>Centre of the first pixel in the patient, mm (0020,0032).</summary>
    public Vector3D? Position { get; init; }

    /// <summary>Direction of rising columns and of rising rows in the patient (0020,0037).</summary>
    public (Vector3D AlongRow, Vector3D AlongColumn)? Orientation { get; init; }

    /// <summary>How the patient lay in the machine (0018,5100), such as HFS; empty where none is stated.</summary>
    public string PatientPosition { get; init; } = string.Empty;

    /// <summary>Factor from stored values to units, such as Hounsfield units.</summary>
    public double RescaleSlope { get; init; } = 1;

    /// <summary>Offset from stored values to units.</summary>
    public double RescaleIntercept { get; init; }

    /// <summary>Window in which the maker shows it, in units: centre and width; null where none is stated.</summary>
    public (double Centre, double Width)? Window { get; init; }
}
