using System.Collections.Immutable;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Calibration;

/// <summary>A region of a file, judged against the image it is said to lie on.</summary>
/// <param name="Number">Number in the file, from 1.</param>
/// <param name="Stated">As the file states it.</param>
/// <param name="Usable">As it is measured in: cut to the image, or scaled by what a person decided; as stated where it is not to be used.</param>
/// <param name="Measure">What its units let one measure.</param>
/// <param name="State">Whether it can be used.</param>
/// <param name="Findings">What was found.</param>
/// <param name="SuggestedShrink">How many times the image was shrunk, where that would explain a region larger than the image; null otherwise.</param>
public sealed record JudgedRegion(
    int Number,
    CalibratedRegion Stated,
    CalibratedRegion Usable,
    RegionMeasure Measure,
    RegionState State,
    ImmutableArray<RegionFinding> Findings,
    double? SuggestedShrink = null)
{
    /// <summary>True where it can be measured in now.</summary>
    public bool IsUsable => Measure != RegionMeasure.Nothing && State is RegionState.Sound or RegionState.Cut or RegionState.Confirmed;

    /// <summary>Its number and place, for people.</summary>
    public string Name => FormattableString.Invariant($"region {Number} (columns {Stated.Left} to {Stated.Right}, rows {Stated.Top} to {Stated.Bottom})");
}
