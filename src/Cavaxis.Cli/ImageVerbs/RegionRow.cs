using Cavaxis.Imaging.Calibration;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary>A region of a file as <c>image measure</c> tells it.</summary>
/// <param name="Number">Number in the file, from 1.</param>
/// <param name="Measures">What can be measured in it.</param>
/// <param name="State">Whether it is used.</param>
/// <param name="Left">First column.</param>
/// <param name="Top">First row.</param>
/// <param name="Right">Last column.</param>
/// <param name="Bottom">Last row.</param>
/// <param name="StepX">From one column to the next, in the file's unit.</param>
/// <param name="UnitX">That unit.</param>
/// <param name="StepY">From one row to the next.</param>
/// <param name="UnitY">Its unit.</param>
/// <param name="SuggestedShrink">By how many times the image would have been shrunk; null where nothing suggests it.</param>
/// <param name="Findings">What was found, in words.</param>
public sealed record RegionRow(
    int Number, RegionMeasure Measures, RegionState State, int Left, int Top, int Right, int Bottom, double StepX, string UnitX, double StepY, string UnitY, double? SuggestedShrink, IReadOnlyList<string> Findings)
{
    /// <summary>A region in the box in which it is measured.</summary>
    /// <param name="region">The region.</param>
    /// <returns>Its row.</returns>
    internal static RegionRow Of(JudgedRegion region) => new(
        region.Number, region.Measure, region.State, region.Usable.Left, region.Usable.Top, region.Usable.Right, region.Usable.Bottom,
        Finite(region.Usable.StepX), region.Usable.UnitX.ToString(), Finite(region.Usable.StepY), region.Usable.UnitY.ToString(), region.SuggestedShrink, [.. region.Findings.Select(static f => f.Words)]);

    // JSON has no word for what is not finite; the findings say what was there.
    private static double Finite(double step) => double.IsFinite(step) ? step : 0;
}
