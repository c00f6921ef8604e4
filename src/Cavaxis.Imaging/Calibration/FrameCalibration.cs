using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Calibration;

/// <summary>The judged regions of an image, and which of them a measurement may use.</summary>
public sealed class FrameCalibration
{
    /// <summary>Most times that an image may have been shrunk.</summary>
    public const double LargestShrink = 8;

    internal FrameCalibration(int width, int height, ImmutableArray<JudgedRegion> regions) => (Width, Height, Regions) = (width, height, regions);

    /// <summary>Columns of the image.</summary>
    public int Width { get; }

    /// <summary>Rows of the image.</summary>
    public int Height { get; }

    /// <summary>The regions in the order of the file.</summary>
    public ImmutableArray<JudgedRegion> Regions { get; }

    /// <summary>Everything found, region by region.</summary>
    public IEnumerable<RegionFinding> Findings => Regions.SelectMany(static region => region.Findings);

    /// <summary>True where no length can be measured without a known one.</summary>
    public bool IsUncalibrated => !Regions.Any(static region => region is { IsUsable: true, Measure: RegionMeasure.Length });

    /// <summary>The regions that can be measured in and hold a point, the smallest first.</summary>
    /// <param name="point">The point.</param>
    /// <returns>None outside all.</returns>
    public ImmutableArray<JudgedRegion> At(PixelPoint point) =>
        [.. Regions.Where(region => region.IsUsable && region.Usable.Holds(point.X, point.Y)).OrderBy(static region => Area(region.Usable))];

    /// <summary>The same image after a person decided by how much it was shrunk since a region was written.</summary>
    /// <param name="region">Number of the region, from 1.</param>
    /// <param name="shrink">How many times, 1 to <see cref="LargestShrink"/>; 1 where the scale holds as stated.</param>
    /// <returns>Another calibration; that region is confirmed and says so.</returns>
    /// <exception cref="InputFaultException">No such region, one that needs no decision, or a number that leaves nothing of it on the image.</exception>
    public FrameCalibration Confirm(int region, double shrink)
    {
        JudgedRegion? one = Regions.FirstOrDefault(r => r.Number == region);
        if (one is not { State: RegionState.NeedsDecision or RegionState.Confirmed })
        {
            throw new InputFaultException(new InputFault(
                FaultCode.NotFound, "region", region.ToString(CultureInfo.InvariantCulture),
                Listed(Regions.Where(static r => r.State == RegionState.NeedsDecision)), "Only a region that waits for a decision can be confirmed."));
        }

        _ = Require.InRange(shrink, 1, LargestShrink, "shrink", "Say how many times smaller the image is than the one the region was written for.");
        CalibratedRegion stated = one.Stated;
        CalibratedRegion scaled = stated with
        {
            Left = Math.Max(0, Scaled(stated.Left)),
            Top = Math.Max(0, Scaled(stated.Top)),
            Right = Math.Min(Width - 1, Scaled(stated.Right)),
            Bottom = Math.Min(Height - 1, Scaled(stated.Bottom)),
            StepX = stated.StepX * shrink,
            StepY = stated.StepY * shrink,
            ReferenceX = stated.ReferenceX is int x ? Scaled(x) : null,
            ReferenceY = stated.ReferenceY is int y ? Scaled(y) : null,
        };
        if (scaled.Right < scaled.Left || scaled.Bottom < scaled.Top || RegionJudge.OfScale(scaled, region).Exists(static f => f.Flaw == RegionFlaw.ImplausibleStep))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "shrink", shrink.ToString("G6", CultureInfo.InvariantCulture), "a number that leaves the region on the image with a step that can be", "Measure by a known length instead."));
        }

        RegionFinding said = new(region, RegionFlaw.ConfirmedByPerson, string.Create(
            CultureInfo.InvariantCulture, $"Region {region}: by decision of a person the image counts as shrunk {shrink:0.###} times; steps {scaled.StepX:G4} and {scaled.StepY:G4} instead of {stated.StepX:G4} and {stated.StepY:G4} a pixel."));
        JudgedRegion confirmed = one with { Usable = scaled, State = RegionState.Confirmed, Findings = [.. one.Findings.Where(static f => f.Flaw != RegionFlaw.ConfirmedByPerson), said] };
        return new FrameCalibration(Width, Height, Regions.SetItem(region - 1, confirmed));

        int Scaled(int pixel) => (int)Math.Floor(pixel / shrink);
    }

    /// <summary>The one region that holds all points of a measurement and measures what is asked.</summary>
    /// <param name="points">At least one point.</param>
    /// <param name="measure">What is to be measured.</param>
    /// <returns>The region.</returns>
    /// <exception cref="InputFaultException">A point is outside all regions or the image, the points lie in different regions, or regions of different scale lie one over the other.</exception>
    public JudgedRegion RegionFor(IReadOnlyList<PixelPoint> points, RegionMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(points);
        const string ByKnownLength = "Measure by a known length instead, such as two marks of a cannula.";
        RequireOnImage(points);
        JudgedRegion[] waiting = [.. Regions.Where(region => region.State == RegionState.NeedsDecision && region.Measure == measure)];
        if (!Regions.Any(region => region.IsUsable && region.Measure == measure))
        {
            throw Refused(
                FaultCode.NotFound, waiting.Length > 0 ? Listed(waiting) : "an image without calibration", "a calibrated region that can be trusted",
                waiting.Length > 0 ? $"{waiting[0].Findings.First(static f => f.Flaw == RegionFlaw.LargerThanImage).Words} Confirm by how much the image was shrunk, or measure by a known length." : ByKnownLength);
        }

        JudgedRegion?[] own = [.. points.Select(point => At(point).FirstOrDefault(region => region.Measure == measure))];
        for (int i = 0; i < own.Length; i++)
        {
            if (own[i] is null)
            {
                throw Refused(FaultCode.OutOfRange, points[i].ToString(), $"a point in {Listed(Regions.Where(r => r.IsUsable && r.Measure == measure))}", $"Move the point into the region. {ByKnownLength}");
            }
        }

        JudgedRegion[] common = [.. Regions.Where(r => r.IsUsable && r.Measure == measure && points.All(p => r.Usable.Holds(p.X, p.Y))).OrderBy(static r => Area(r.Usable))];
        if (common.Length == 0)
        {
            throw Refused(
                FaultCode.Contradiction, Listed(own.OfType<JudgedRegion>().DistinctBy(static r => r.Number)), "points of one region",
                "A measurement across two regions has no scale: place all points in one.");
        }

        JudgedRegion? other = points.SelectMany(point => At(point)).FirstOrDefault(r => !RegionJudge.SameScale(r, common[0]));
        return other is null
            ? common[0]
            : throw Refused(FaultCode.Contradiction, $"{common[0].Name} and {other.Name}", "points where one scale holds", $"The two regions lie one over the other with different scales. {ByKnownLength}");
    }

    /// <summary>The scale for a length through points.</summary>
    /// <param name="points">The points.</param>
    /// <returns>The scale of the region they lie in.</returns>
    /// <exception cref="InputFaultException">See <see cref="RegionFor"/>.</exception>
    public LengthScale ScaleFor(IReadOnlyList<PixelPoint> points)
    {
        JudgedRegion region = RegionFor(points, RegionMeasure.Length);
        bool confirmed = region.State == RegionState.Confirmed;
        string words = string.Create(CultureInfo.InvariantCulture, $"Scale by {region.Name} of the file: {region.Usable.StepX:G5} by {region.Usable.StepY:G5} cm a pixel.");
        foreach (RegionFinding finding in region.Findings.Where(static f => f.Flaw is RegionFlaw.ConfirmedByPerson or RegionFlaw.EndsOnePixelOutside))
        {
            words += " " + finding.Words;
        }

        return new LengthScale(
            10 * region.Usable.StepX, 10 * region.Usable.StepY, ScaleTolerance.LengthRelativeSd, confirmed ? ScaleOrigin.ConfirmedRegion : ScaleOrigin.Region, region.Number, words);
    }

    /// <summary>Refuses points that are not on the image.</summary>
    /// <param name="points">The points.</param>
    /// <exception cref="InputFaultException">A point is outside or not finite.</exception>
    internal void RequireOnImage(IReadOnlyList<PixelPoint> points)
    {
        foreach (PixelPoint point in points)
        {
            if (!(point.X >= -0.5 && point.X <= Width - 0.5 && point.Y >= -0.5 && point.Y <= Height - 0.5))
            {
                throw Refused(FaultCode.OutOfRange, point.ToString(), string.Create(CultureInfo.InvariantCulture, $"a point on the image of {Width} by {Height}"), "Give columns from the left and rows from the top, in pixels.");
            }
        }
    }

    private static InputFaultException Refused(FaultCode code, string value, string accepted, string remedy) => new(new InputFault(code, "points", value, accepted, remedy));

    private static string Listed(IEnumerable<JudgedRegion> regions)
    {
        string text = string.Join(" and ", regions.Select(static region => region.Name));
        return text.Length == 0 ? "(no region)" : text;
    }

    private static double Area(CalibratedRegion region) => (region.Right - region.Left + 1.0) * (region.Bottom - region.Top + 1);
}
