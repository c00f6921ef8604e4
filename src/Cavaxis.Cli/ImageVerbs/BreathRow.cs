using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>A vein over the breath as <c>image measure</c> tells it.</summary>
/// <param name="Diameters">The diameter on each frame where both walls were found.</param>
/// <param name="WidestFrame">Frame of the widest, from 1.</param>
/// <param name="NarrowestFrame">Frame of the narrowest.</param>
/// <param name="CollapsibilityPercent">(widest − narrowest)/widest.</param>
/// <param name="DistensibilityPercent">(widest − narrowest)/narrowest.</param>
/// <param name="VariationPercent">(widest − narrowest)/mean.</param>
/// <param name="RangeByChancePercent">What placing errors alone would show.</param>
/// <param name="SecondsSeen">From the first to the last frame, s.</param>
/// <param name="Remarks">What has to be known with the numbers.</param>
public sealed record BreathRow(
    IReadOnlyList<MeasurementRow> Diameters, int WidestFrame, int NarrowestFrame, Estimate CollapsibilityPercent, Estimate DistensibilityPercent, Estimate VariationPercent,
    double RangeByChancePercent, double? SecondsSeen, IReadOnlyList<string> Remarks)
{
    /// <summary>The row of a reading.</summary>
    /// <param name="diameters">All diameters.</param>
    /// <param name="breath">The reading.</param>
    /// <returns>Its row.</returns>
    internal static BreathRow Of(IReadOnlyList<ImageMeasurement> diameters, BreathVariation breath) => new(
        [.. diameters.Select(MeasurementRow.Of)], breath.Widest.Provenance.Frames[0].Frame, breath.Narrowest.Provenance.Frames[0].Frame,
        breath.CollapsibilityPercent, breath.DistensibilityPercent, breath.VariationPercent, breath.RangeByChancePercent, breath.SecondsSeen, breath.Remarks);
}
