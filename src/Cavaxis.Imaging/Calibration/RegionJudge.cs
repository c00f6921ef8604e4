using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Frames;

namespace Cavaxis.Imaging.Calibration;

/// <summary>
/// Judges the regions that a file states (DICOM PS3.3 C.8.5.5.1) against the size of the image. Files are wrong in known ways: an image that was shrunk keeps the
/// region of its former size, an end is written as a length, a unit is none. Each is named; none is mended in silence.
/// </summary>
public static class RegionJudge
{
    /// <summary>Largest step that a picture of a body can have, cm from one pixel to the next. Assumption of this project.</summary>
    public const double LargestStepCm = 1;

    /// <summary>Largest step of a spectrum, cm/s from one row to the next. Assumption of this project.</summary>
    public const double LargestStepCmPerS = 100;

    /// <summary>Largest step of time, s from one column to the next. Assumption of this project.</summary>
    public const double LargestStepS = 1;

    /// <summary>Steps that differ by less than this share are one scale.</summary>
    internal const double SameStepShare = 1e-3;

    /// <summary>Sizes that pictures commonly have, for guessing what an image was before it was shrunk. Common practice, no source.</summary>
    private static readonly (int Width, int Height)[] CommonSizes =
    [
        (640, 480), (720, 576), (800, 600), (1024, 768), (1152, 864), (1280, 720), (1280, 960), (1280, 1024), (1600, 1200), (1680, 1050), (1920, 1080), (1920, 1200), (2048, 1536),
    ];

    /// <summary>Judges all regions of an image.</summary>
    /// <param name="width">Columns of the image.</param>
    /// <param name="height">Rows of the image.</param>
    /// <param name="regions">As the file states them.</param>
    /// <returns>The regions with what was found.</returns>
    public static FrameCalibration Judge(int width, int height, IReadOnlyList<CalibratedRegion> regions)
    {
        ArgumentNullException.ThrowIfNull(regions);
        JudgedRegion[] judged = [.. regions.Select((region, i) => One(width, height, region, i + 1))];
        for (int i = 0; i < judged.Length; i++)
        {
            judged[i] = WithOverlaps(judged, i);
        }

        return new FrameCalibration(width, height, [.. judged]);
    }

    /// <summary>What the units let one measure.</summary>
    /// <param name="region">The region.</param>
    /// <returns>Lengths, depth or speed over time, or nothing.</returns>
    internal static RegionMeasure MeasureOf(CalibratedRegion region) => (region.Format, region.UnitX, region.UnitY) switch
    {
        (RegionFormat.TwoDimensional, RegionUnit.Centimetre, RegionUnit.Centimetre) => RegionMeasure.Length,
        (RegionFormat.Motion, RegionUnit.Second, RegionUnit.Centimetre) => RegionMeasure.DepthOverTime,
        (RegionFormat.Spectral, RegionUnit.Second, RegionUnit.CentimetrePerSecond) => RegionMeasure.SpeedOverTime,
        _ => RegionMeasure.Nothing,
    };

    /// <summary>Findings about units and steps, which do not depend on the image.</summary>
    internal static List<RegionFinding> OfScale(CalibratedRegion region, int number)
    {
        List<RegionFinding> found = [];
        RegionMeasure measure = MeasureOf(region);
        if (measure == RegionMeasure.Nothing && region.Format is RegionFormat.TwoDimensional or RegionFormat.Motion or RegionFormat.Spectral)
        {
            string wanted = region.Format == RegionFormat.TwoDimensional ? "centimetres in both directions" : region.Format == RegionFormat.Motion ? "seconds and centimetres" : "seconds and centimetres in a second";
            found.Add(new(number, RegionFlaw.UnitDoesNotFit, string.Create(CultureInfo.InvariantCulture, $"Region {number}: its units are {region.UnitX} and {region.UnitY}; {wanted} are needed to measure in it.")));
        }

        if (measure != RegionMeasure.Nothing)
        {
            (double mostX, double mostY) = measure switch
            {
                RegionMeasure.Length => (LargestStepCm, LargestStepCm),
                RegionMeasure.DepthOverTime => (LargestStepS, LargestStepCm),
                _ => (LargestStepS, LargestStepCmPerS),
            };

            // A spectrum counts its rows downwards and its speeds upwards: writers differ in the sign of the step, so only its size is taken.
            double stepY = measure == RegionMeasure.SpeedOverTime ? Math.Abs(region.StepY) : region.StepY;
            if (!(region.StepX > 0 && region.StepX <= mostX && stepY > 0 && stepY <= mostY))
            {
                found.Add(new(number, RegionFlaw.ImplausibleStep, string.Create(
                    CultureInfo.InvariantCulture, $"Region {number}: steps of {region.StepX:G6} and {region.StepY:G6} a pixel cannot be; above 0 and up to {mostX:G6} and {mostY:G6} are accepted.")));
            }
            else if (measure == RegionMeasure.Length && Math.Abs(region.StepX - region.StepY) > SameStepShare * region.StepX)
            {
                found.Add(new(number, RegionFlaw.UnequalSteps, string.Create(
                    CultureInfo.InvariantCulture, $"Region {number}: its pixels are not square ({region.StepX:G6} by {region.StepY:G6} cm); lengths and angles take that into account.")));
            }
        }

        return found;
    }

    private static JudgedRegion One(int width, int height, CalibratedRegion region, int number)
    {
        RegionMeasure measure = MeasureOf(region);
        List<RegionFinding> found = OfScale(region, number);
        bool broken = found.Exists(static f => f.Flaw is RegionFlaw.UnitDoesNotFit or RegionFlaw.ImplausibleStep);
        CalibratedRegion usable = region;
        double? shrink = null;
        RegionState state = RegionState.Sound;
        int beyond = Math.Max(Math.Max(region.Right - (width - 1), region.Bottom - (height - 1)), Math.Max(-region.Left, -region.Top));
        if (region.Right < region.Left || region.Bottom < region.Top)
        {
            found.Add(new(number, RegionFlaw.Empty, string.Create(CultureInfo.InvariantCulture, $"Region {number}: ends before it begins (columns {region.Left} to {region.Right}, rows {region.Top} to {region.Bottom}).")));
            broken = true;
        }
        else if (beyond == 1 && region.Left >= 0 && region.Top >= 0)
        {
            usable = region with { Right = Math.Min(region.Right, width - 1), Bottom = Math.Min(region.Bottom, height - 1) };
            found.Add(new(number, RegionFlaw.EndsOnePixelOutside, string.Create(
                CultureInfo.InvariantCulture, $"Region {number}: ends one pixel outside the image of {width} by {height}; it is cut to the image, its scale is left as stated.")));
            state = RegionState.Cut;
        }
        else if (beyond > 0)
        {
            shrink = ShrinkThatExplains(width, height, region);
            found.Add(new(number, RegionFlaw.LargerThanImage, LargerInWords(width, height, region, number, measure, shrink)));
            state = RegionState.NeedsDecision;
        }

        return new JudgedRegion(number, region, usable, measure, broken ? RegionState.Unusable : state, [.. found], shrink);
    }

    private static string LargerInWords(int width, int height, CalibratedRegion region, int number, RegionMeasure measure, double? shrink)
    {
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"Region {number}: columns {region.Left} to {region.Right} and rows {region.Top} to {region.Bottom} reach outside the image of {width} by {height}. The image was resized after the region was written, or the region is wrong; nothing is measured in it before a person decides.");
        if (shrink is double factor)
        {
            string step = measure == RegionMeasure.Length ? string.Create(CultureInfo.InvariantCulture, $" of {region.StepX * factor:G4} cm a pixel instead of {region.StepX:G4}") : "";
            text += string.Create(CultureInfo.InvariantCulture, $" An image of {width * factor:0} by {height * factor:0}, shrunk {factor:0.###} times, would explain it and mean steps{step}.");
        }

        return text;
    }

    /// <summary>The smallest common size of the same shape that holds the region; else the next whole number of times.</summary>
    private static double? ShrinkThatExplains(int width, int height, CalibratedRegion region)
    {
        if (region.Left < 0 || region.Top < 0)
        {
            return null;
        }

        double least = Math.Max((region.Right + 1.0) / width, (region.Bottom + 1.0) / height);
        foreach ((int commonWidth, int commonHeight) in CommonSizes)
        {
            double factor = commonWidth / (double)width;
            if (factor >= least - 0.002 && Math.Abs(factor - (commonHeight / (double)height)) < 0.01 * factor)
            {
                return factor;
            }
        }

        double whole = Math.Ceiling(least - 0.002);
        return whole <= FrameCalibration.LargestShrink ? whole : null;
    }

    private static JudgedRegion WithOverlaps(JudgedRegion[] all, int i)
    {
        JudgedRegion one = all[i];
        ImmutableArray<RegionFinding> found = one.Findings;
        foreach (JudgedRegion other in all)
        {
            if (other.Number != one.Number && one.IsUsable && other.IsUsable && Meet(one.Usable, other.Usable) && !SameScale(one, other))
            {
                found = found.Add(new(one.Number, RegionFlaw.Overlaps, string.Create(
                    CultureInfo.InvariantCulture, $"Region {one.Number}: covers part of region {other.Number}, which has another scale; a point in both is not measured.")));
            }
        }

        return one with { Findings = found };
    }

    private static bool Meet(CalibratedRegion a, CalibratedRegion b) => a.Left <= b.Right && b.Left <= a.Right && a.Top <= b.Bottom && b.Top <= a.Bottom;

    /// <summary>True where two regions mean the same by a pixel: a colour box on its picture.</summary>
    internal static bool SameScale(JudgedRegion a, JudgedRegion b) => a.Measure == b.Measure
        && Math.Abs(a.Usable.StepX - b.Usable.StepX) <= SameStepShare * Math.Abs(a.Usable.StepX)
        && Math.Abs(a.Usable.StepY - b.Usable.StepY) <= SameStepShare * Math.Abs(a.Usable.StepY);
}
