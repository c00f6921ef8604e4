using System.Globalization;
using Cavaxis.Imaging.Calibration;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Doppler;

/// <summary>
/// Time and speed of a spectrum on the image. The baseline is the row of the reference pixel, whose place the standard counts from the corner of the region (DICOM PS3.3
/// C.8.5.5.1); the step of speed is taken without its sign, since writers differ in it, and sides are named as they are seen: above and below.
/// </summary>
public sealed record SpectralAxes
{
    private SpectralAxes(JudgedRegion region, double baselineRow, bool baselineByHand)
    {
        CalibratedRegion box = region.Usable;
        (Region, Left, Right, Top, Bottom) = (region.Number, box.Left, box.Right, box.Top, box.Bottom);
        (SecondsPerColumn, CmPerSPerRow, BaselineRow) = (box.StepX, Math.Abs(box.StepY), baselineRow);
        (Origin, BaselineByHand) = (region.State == RegionState.Confirmed ? ScaleOrigin.ConfirmedRegion : ScaleOrigin.Region, baselineByHand);
        string baseline = baselineByHand ? "baseline placed by a person" : "baseline of the file";
        Words = string.Create(
            CultureInfo.InvariantCulture, $"Scale by {region.Name} of the file, a spectrum: {SecondsPerColumn:G5} s a column, {CmPerSPerRow:G5} cm/s a row; {baseline} at row {BaselineRow:0.#}.");
    }

    /// <summary>Number of the region, from 1.</summary>
    public int Region { get; }

    /// <summary>First column.</summary>
    public int Left { get; }

    /// <summary>Last column.</summary>
    public int Right { get; }

    /// <summary>First row.</summary>
    public int Top { get; }

    /// <summary>Last row.</summary>
    public int Bottom { get; }

    /// <summary>Number of columns.</summary>
    public int Columns => Right - Left + 1;

    /// <summary>From one column to the next, s.</summary>
    public double SecondsPerColumn { get; }

    /// <summary>From one row to the next, cm/s.</summary>
    public double CmPerSPerRow { get; }

    /// <summary>Row of the image at which the speed is zero.</summary>
    public double BaselineRow { get; }

    /// <summary>True where a person placed the baseline.</summary>
    public bool BaselineByHand { get; }

    /// <summary>Where the scale comes from.</summary>
    public ScaleOrigin Origin { get; }

    /// <summary>For people: the scale.</summary>
    public string Words { get; }

    /// <summary>The axes of a spectrum.</summary>
    /// <param name="region">A region that measures speed over time.</param>
    /// <param name="baselineRow">Row of the image where the speed is zero, placed by a person; null for that of the file.</param>
    /// <returns>The axes.</returns>
    /// <exception cref="InputFaultException">The region is no spectrum that can be used, or has no baseline.</exception>
    public static SpectralAxes Of(JudgedRegion region, double? baselineRow = null)
    {
        ArgumentNullException.ThrowIfNull(region);
        if (!region.IsUsable || region.Measure != RegionMeasure.SpeedOverTime)
        {
            string why = region.Findings.IsEmpty ? "" : " " + string.Join(" ", region.Findings.Select(static f => f.Words));
            throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "region", region.Name, "a spectrum with seconds and centimetres in a second", $"Choose the region of the spectrum.{why}"));
        }

        CalibratedRegion box = region.Usable;
        if (baselineRow is null && box.ReferenceY is null)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.MissingField, "baselineRow", "(nothing)", string.Create(CultureInfo.InvariantCulture, $"a row from {box.Top} to {box.Bottom}"), "The file states no baseline: place it by hand."));
        }

        // Zero speed lies beside the reference row where the file gives that row a speed of its own.
        double stated = box.Top + (box.ReferenceY ?? 0) + ((box.ReferenceValueY ?? 0) / Math.Abs(box.StepY));
        double row = Require.InRange(baselineRow ?? stated, box.Top - 0.5, box.Bottom + 0.5, "baselineRow", "Place the baseline inside the spectrum.");
        return new SpectralAxes(region, row, baselineRow is not null);
    }

    /// <summary>Speed at a row, positive on either side.</summary>
    /// <param name="row">Row of the image.</param>
    /// <returns>cm/s.</returns>
    public double SpeedAt(double row) => Math.Abs(BaselineRow - row) * CmPerSPerRow;
}
