using System.Globalization;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Imaging.Tips;
using Cavaxis.Planning.Plans;
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

    /// <summary>An examination with what was measured on it.</summary>
    /// <param name="modality">Kind.</param>
    /// <param name="measured">At least one measurement, all of one file.</param>
    /// <param name="question">What was asked; null for nothing.</param>
    /// <returns>The examination; its image is the file by its hash.</returns>
    /// <exception cref="InputFaultException">No measurement, or of different files.</exception>
    public static ImagingDone Examination(ImagingModality modality, IReadOnlyList<ImageMeasurement> measured, string? question = null)
    {
        ArgumentNullException.ThrowIfNull(measured);
        if (measured.Count == 0 || measured.SelectMany(static m => m.Provenance.Frames).Select(static f => f.FileSha256).Distinct().Count() > 1)
        {
            throw new InputFaultException(new InputFault(FaultCode.Contradiction, "measured", measured.Count == 0 ? "(nothing)" : "different files", "measurements of one file", "Write down the measurements of each file by themselves."));
        }

        string finding = string.Join("; ", measured.Select(static m => $"{PlainWords.FromName(m.Kind.ToString())} {Value(m)}, {m.Provenance.ShortWords}"));
        return new ImagingDone { Modality = modality, Question = question, Finding = Cut(finding, EventLimits.Remark), Image = Image(measured[0].Provenance.Frames[0]) };
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

    private static PortPlace Place(TipPlacement tip, Quantities.Estimate belowMm, bool isInferred) => new()
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

    private static string Value(ImageMeasurement m) => string.Create(CultureInfo.InvariantCulture, $"{m.Value.Value:G4} ± {m.Value.Sd:G2} {m.Unit}");

    private static string Cut(string text, int most) => text.Length <= most ? text : string.Concat(text.AsSpan(0, most - 1), "…");
}
