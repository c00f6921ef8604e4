namespace Cavaxis.Dicom.Headers;

/// <summary>What a file shows, as far as this program tells it apart.</summary>
public enum ImageKind
{
    /// <summary>No picture: a report, a plan, a curve.</summary>
    NoPicture,

    /// <summary>One frame of ultrasound.</summary>
    UltrasoundStill,

    /// <summary>Frames of ultrasound over time.</summary>
    UltrasoundLoop,

    /// <summary>A slice of computed tomography.</summary>
    TomographySlice,

    /// <summary>Another picture.</summary>
    OtherPicture,
}
