namespace Cavaxis.Imaging.Calibration;

/// <summary>What is wrong, or has to be known, about a region that a file states.</summary>
public enum RegionFlaw
{
    /// <summary>It reaches outside the image by more than a pixel: the image was resized after the region was written, or the region is wrong.</summary>
    LargerThanImage,

    /// <summary>It ends one pixel outside: its end was written as a length instead of as the last pixel. Cut to the image.</summary>
    EndsOnePixelOutside,

    /// <summary>Its last column or row lies before its first, or nothing of it lies on the image.</summary>
    Empty,

    /// <summary>A unit is no length where the picture should have lengths, or no speed over time where it is a spectrum.</summary>
    UnitDoesNotFit,

    /// <summary>A step is not above zero, or so large that no picture has it.</summary>
    ImplausibleStep,

    /// <summary>It covers part of another region with another scale.</summary>
    Overlaps,

    /// <summary>Its pixels are not square.</summary>
    UnequalSteps,

    /// <summary>A person said by how much the image was shrunk, and the scale follows from that.</summary>
    ConfirmedByPerson,
}
