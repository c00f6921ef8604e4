using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Dicom.Reading;

namespace Cavaxis.Bedside.Images;

/// <summary>An image that was opened.</summary>
/// <param name="Kept">Where it lies.</param>
/// <param name="File">What it says about its picture; of a series its first slice.</param>
public sealed record OpenedImage(KeptImage Kept, DicomFile File);
