using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tips;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>What a measurement on an image says in the record: value, error, and in words where it was measured and by what scale. Who measured is for the entry.</summary>
public static class RecordEntries
{
    private const double MmPerCm = 10;

    /// <summary>A reading.</summary>
    /// <param name="measured">Integral, rate, output, or a diameter of the left ventricle.</param>
    /// <param name="quantity">What it is a reading of.</param>
    /// <returns>The reading, with its provenance as its method.</returns>
    /// <exception cref="InputFaultException">The unit is not that of the quantity, or the value is out of its range.</exception>
    public static Reading Reading(ImageMeasurement measured, ObservedQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(measured);
        QuantityDefinition of = QuantityTable.Of(quantity);
        if (of.Unit != measured.Unit)
        {
            throw new InputFaultException(new InputFault(FaultCode.WrongKind, "quantity", measured.Unit, of.Unit, $"Choose the quantity that was measured; {of.Words} is another."));
        }

        if (QuantityTable.Check(quantity, measured.Value.Value, "value") is InputFault fault)
        {
            throw new InputFaultException(fault);
        }

        string remark = string.Join(" ", measured.Remarks);
        return new Reading
        {
            Quantity = quantity,
            Value = measured.Value.Value,
            Sd = measured.Value.Sd,
            Method = Cut(measured.Provenance.ShortWords, 200),
            Remark = remark.Length == 0 ? null : Cut(remark, 1000),
        };
    }

    /// <summary>What flow readings of a spectrum say among the readings: integral, rate and output.</summary>
    /// <param name="measured">Measurements of one spectrum.</param>
    /// <returns>A reading for each that the record keeps as one.</returns>
    /// <exception cref="InputFaultException">A value is out of the range of its quantity.</exception>
    public static IReadOnlyList<Reading> FlowReadings(IEnumerable<ImageMeasurement> measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return [.. measured.Select(static m => (Measured: m, Quantity: QuantityOf(m.Kind))).Where(static m => m.Quantity is not null).Select(static m => Reading(m.Measured, m.Quantity!.Value))];
    }

    /// <summary>An examination with what was measured on it.</summary>
    /// <param name="modality">Kind.</param>
    /// <param name="measured">At least one measurement, all of one file.</param>
    /// <param name="question">What was asked; null for nothing.</param>
    /// <param name="what">What was measured, in the person's words; null for nothing.</param>
    /// <param name="image">Name of the image in the record; null for the frame of the file.</param>
    /// <param name="breath">What the first and second of them, widest and narrowest, tell over the breath; null for nothing.</param>
    /// <returns>The examination; its image is the file by its hash.</returns>
    /// <exception cref="InputFaultException">No measurement, or of different files.</exception>
    public static ImagingDone Examination(
        ImagingModality modality, IReadOnlyList<ImageMeasurement> measured, string? question = null, string? what = null, string? image = null, BreathVariation? breath = null)
    {
        ArgumentNullException.ThrowIfNull(measured);
        if (measured.Count == 0 || measured.SelectMany(static m => m.Provenance.Frames).Select(static f => f.FileSha256).Distinct().Count() > 1)
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "measured", measured.Count == 0 ? "(nothing)" : "different files", "measurements of one file", "Write down the measurements of each file by themselves."));
        }

        // Where all were measured on the same points, that is said once.
        bool isOnce = measured.Select(static m => m.Provenance.ShortWords).Distinct().Count() == 1;
        IEnumerable<string> numbers = measured.Select((m, i) => $"{(breath is null ? PlainWords.FromName(m.Kind.ToString()) : i == 0 ? "widest" : "narrowest")} {Value(m.Value, m.Unit)}{(isOnce ? string.Empty : $", {m.Provenance.ShortWords}")}");
        if (breath is not null)
        {
            numbers = numbers.Append($"collapsibility {Value(breath.CollapsibilityPercent, "%")}").Append($"distensibility {Value(breath.DistensibilityPercent, "%")}");
        }

        string finding = $"{(what is null ? string.Empty : what + ": ")}{string.Join("; ", numbers)}{(isOnce ? $"; {measured[0].Provenance.ShortWords}" : string.Empty)}.";
        ImageReference frame = Image(measured[0].Provenance.Frames[0]);
        return new ImagingDone { Modality = modality, Question = question, Finding = Cut(finding, EventLimits.Remark), Image = image is null ? frame : frame with { Name = image } };
    }

    /// <summary>The position of a cannula by what was seen of it.</summary>
    /// <param name="cannula">Its name in the record.</param>
    /// <param name="tip">Where the tip lies.</param>
    /// <param name="sight">How it was seen.</param>
    /// <param name="view">The view, in words; null for nothing.</param>
    /// <param name="frame">The frame that it was measured on; null where none was.</param>
    /// <returns>The reading of the position: the tip inferred, the part that was seen as seen.</returns>
    public static PositionRead Position(string cannula, TipPlacement tip, PositionSight sight, string? view = null, FrameIdentity? frame = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(cannula);
        ArgumentNullException.ThrowIfNull(tip);
        SeenFeature feature = tip.Question.Feature;
        PortPlace seen = Place(tip, tip.FeatureBelowSeenLandmarkMm, isInferred: false);
        string zones = string.Join(", ", tip.Zones.Select(static z => string.Create(CultureInfo.InvariantCulture, $"{PlainWords.FromName(z.Zone.ToString())} {100 * z.Share.Value:F0} %")));
        string remark = $"Seen: {feature.Name}. Tip by the dimensions of the device: {zones}. {string.Join(" ", tip.Remarks)}";
        return new PositionRead
        {
            Cannula = cannula,
            Tip = ReferenceEquals(feature, SeenFeature.Tip) ? seen : Place(tip, tip.FromSeenLandmark.BelowMm, isInferred: true),
            ReturnPort = feature.Name == SeenFeature.ReturnPortName ? seen : null,
            FirstHole = feature.Name == SeenFeature.FirstHoleName ? seen : null,
            SeenBy = sight,
            View = view,
            Image = frame is null ? null : Image(frame),
            Remark = Cut(remark, EventLimits.Remark),
        };
    }

    private static PortPlace Place(TipPlacement tip, Estimate belowMm, bool isInferred) => new()
    {
        Landmark = tip.Question.Seen.Landmark,
        OffsetCm = belowMm.Value / MmPerCm,
        SdCm = belowMm.Sd / MmPerCm,
        IsInferred = isInferred,
    };

    private static ImageReference Image(FrameIdentity frame) => new()
    {
        Name = string.Create(CultureInfo.InvariantCulture, $"file {frame.FileSha256[..12]}, frame {frame.Frame}"),
        FileSha256 = frame.FileSha256,
    };

    private static ObservedQuantity? QuantityOf(MeasurementKind kind) => kind switch
    {
        MeasurementKind.VelocityTimeIntegral => ObservedQuantity.OutflowVtiCm,
        MeasurementKind.BeatRate => ObservedQuantity.HeartRatePerMin,
        MeasurementKind.Output => ObservedQuantity.CardiacOutputLPerMin,
        _ => null,
    };

    /// <summary>With as many digits as the error leaves: two of the standard deviation's.</summary>
    private static string Value(Estimate value, string unit)
    {
        string format = $"F{(value.Sd > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(value.Sd)), 0, 4) : 2).ToString(CultureInfo.InvariantCulture)}";
        return $"{value.Value.ToString(format, CultureInfo.InvariantCulture)} ± {value.Sd.ToString(format, CultureInfo.InvariantCulture)} {unit} ({value.Origin.ToString().ToLowerInvariant()})";
    }

    private static string Cut(string text, int most) => text.Length <= most ? text : string.Concat(text.AsSpan(0, most - 1), "…");
}
