using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Elements;
using Cavaxis.Dicom.Headers;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Dicom.Reading;

/// <summary>A file that was read: what it says about its picture. Its frames are asked one at a time of the reader.</summary>
public sealed class DicomFile
{
    internal DicomFile(string path, string sha256, ImageHeader header, IReadOnlyList<CalibratedRegion> regions, IReadOnlyList<ImageCaution> cautions, DicomSet head, DicomSet data)
    {
        (Path, Sha256, Header, Regions, Cautions, Head, Data) = (path, sha256, header, regions, cautions, head, data);
    }

    /// <summary>Where it lies, in full.</summary>
    public string Path { get; }

    /// <summary>SHA-256 of its bytes, 64 hexadecimal digits in lower case: which file a measurement was made in.</summary>
    public string Sha256 { get; }

    /// <summary>What it says about its picture.</summary>
    public ImageHeader Header { get; }

    /// <summary>Calibrated regions, as stated.</summary>
    public IReadOnlyList<CalibratedRegion> Regions { get; }

    /// <summary>What whoever measures in it must know.</summary>
    public IReadOnlyList<ImageCaution> Cautions { get; }

    /// <summary>How many frames it holds.</summary>
    public int FrameCount => Header.Frames;

    /// <summary>Elements of the file's head (group 0002).</summary>
    internal DicomSet Head { get; }

    /// <summary>All other elements; pixels without their bytes.</summary>
    internal DicomSet Data { get; }
}
