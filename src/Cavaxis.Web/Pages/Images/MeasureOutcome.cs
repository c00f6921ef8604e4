using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Pointing;

namespace Cavaxis.Web.Pages.Images;

/// <summary>What follows from the points set so far.</summary>
/// <param name="Measurements">Numbers with error and provenance; empty where more points are needed.</param>
/// <param name="Line">A line found by the program; null for none.</param>
/// <param name="Notes">What has to be known with it.</param>
internal sealed record MeasureOutcome(IReadOnlyList<ImageMeasurement> Measurements, IReadOnlyList<PicturePoint>? Line = null, IReadOnlyList<string>? Notes = null)
{
    /// <summary>Nothing to measure yet.</summary>
    public static MeasureOutcome Nothing { get; } = new([]);

    /// <summary>Why it cannot be measured.</summary>
    public IReadOnlyList<InputFault> Faults { get; init; } = [];
}
