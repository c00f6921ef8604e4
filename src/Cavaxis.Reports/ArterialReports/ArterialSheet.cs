using System.Globalization;
using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Planning.Arterial;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>
/// The arterial tree of a patient on support: colour by saturation, pattern by whose blood it is, numbers at the named arteries, and where the
/// two flows meet. A scheme from the front, the patient's right on the left; not to scale.
/// </summary>
public static class ArterialSheet
{
    private const double SmallestMm = 0.75;
    private const double PaperPerVesselMm = 0.1;
    private const double TitlePt = 10;
    private const double FootPt = 8;
    private const double FootLineMm = 3.9;

    /// <summary>The drawing.</summary>
    /// <param name="answer">An answer with a result.</param>
    /// <returns>A drawing 190 mm wide.</returns>
    /// <exception cref="ArgumentException">The answer holds no result.</exception>
    public static Drawing Of(ArteriesAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArterialSupportResult result = answer.Result ?? throw new ArgumentException("There is no result to draw.", nameof(answer));
        List<DrawingItem> items =
        [
            .. Head(answer, result),
            new Text(new Point(ArterialPaper.MarginMm + 4, ArterialPaper.TopMm), "patient's right", 7.5, Colour: Colour.Muted),
            new Text(new Point(ArterialPaper.WidthMm - ArterialPaper.MarginMm - 4, ArterialPaper.TopMm), "patient's left", 7.5, TextAnchor.End, Colour: Colour.Muted),
            .. Tree(result),
            .. Meeting(result.Mixing),
            .. TreeLabels.Paint(Labels(result)),
        ];
        double foot = ArterialLegend.Paint(items, ArterialPaper.BottomMm + 8);
        foreach ((string words, bool bold) in Foot(result))
        {
            foreach (string line in TextMetrics.Wrapped(PrintableText.OneLine(words), ArterialPaper.WidthMm - 8, FootPt, bold))
            {
                items.Add(new Text(new Point(4, foot), line, FootPt, Bold: bold));
                foot += FootLineMm;
            }
        }

        return new Drawing(ArterialPaper.WidthMm, foot + 2, "Arteries on support", Description(result), items);
    }

    /// <summary>The drawing in words.</summary>
    /// <param name="result">The result.</param>
    /// <returns>Sentences.</returns>
    public static string Description(ArterialSupportResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return $"{ArterialText.Mixing(result.Mixing)} {string.Join(" ", result.Organs.Select(static o => string.Create(CultureInfo.InvariantCulture, $"{o.Title}: saturation {ArterialText.Beat(o.SaturationPercent)} %, {ArterialText.Percent(o.MembraneShare.Mean)} % of the blood from the membrane lung.")))} {string.Join(" ", result.Limbs.Select(static l => l.InWords))}";
    }

    // Two lines at most for title, basis and support: titles and devices have lengths of their own.
    private static IEnumerable<DrawingItem> Head(ArteriesAnswer answer, ArterialSupportResult result)
    {
        double room = ArterialPaper.WidthMm - 8;
        double line = 6.5;
        foreach (string part in TextMetrics.Wrapped(PrintableText.OneLine($"{(answer.Invented ? "[INVENTED CASE]  " : string.Empty)}{answer.CaseTitle}"), room, TitlePt, true).Take(2))
        {
            yield return new Text(new Point(4, line), part, TitlePt, Bold: true);
            line += 5;
        }

        foreach (string words in new[] { answer.Basis, Support(result) })
        {
            foreach (string part in TextMetrics.Wrapped(PrintableText.OneLine(words), room, 9).Take(2))
            {
                yield return new Text(new Point(4, line), part, 9);
                line += 4.6;
            }
        }
    }

    private static string Support(ArterialSupportResult result) => result.PumpFlowLPerMin > 0
        ? PrintableText.OneLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Pump {result.PumpFlowLPerMin:F1} L/min into the {result.ReturnInWords}: saturation {result.MembraneSaturationPercent:F0} %, PO2 {result.MembranePo2MmHg:F0} mmHg. From the lungs: {result.NativeSaturationPercent:F0} %, {result.NativePo2MmHg:F0} mmHg. Calculated."))
        : string.Create(CultureInfo.InvariantCulture, $"No pump flow. From the lungs: saturation {result.NativeSaturationPercent:F0} %, PO2 {result.NativePo2MmHg:F0} mmHg. Calculated.");

    // Thin arteries first, so that a wide one is never cut by a thin one.
    private static IEnumerable<DrawingItem> Tree(ArterialSupportResult result)
    {
        foreach (ArterialReading artery in result.Arteries.OrderBy(static a => a.DiameterMm))
        {
            Point[] points = [.. artery.Course.Select(ArterialPaper.At)];
            double width = SmallestMm + (PaperPerVesselMm * artery.DiameterMm);
            if (artery.HoldsCannula)
            {
                yield return new Polyline(points, Style.Line(Colour.Ink, width + 1.1));
            }

            foreach (DrawingItem stroke in BloodPaint.Strokes(points, artery.SaturationPercent.Mean, BloodPaint.KindOf(artery.MembraneShare), width))
            {
                yield return stroke;
            }
        }
    }

    private static IEnumerable<DrawingItem> Meeting(MixingZone? mixing)
    {
        if (mixing?.HalfOnDrawing is not LayoutPoint half)
        {
            yield break;
        }

        Point at = ArterialPaper.At(half);
        yield return new Polygon([at.Moved(0, -2.4), at.Moved(2.4, 0), at.Moved(0, 2.4), at.Moved(-2.4, 0)], Style.Line(Colour.Ink, 0.5) with { Fill = Colour.Paper });
        yield return new Circle(at, 0.6, Style.Area(Colour.Ink));
    }

    private static List<TreeLabel> Labels(ArterialSupportResult result)
    {
        Dictionary<string, ArterialReading> arteries = result.Arteries.ToDictionary(static a => a.Name);
        List<TreeLabel> labels = [];
        foreach (OrganReading organ in result.Organs)
        {
            OrganAnchor anchor = OrganAnchor.All.First(a => a.Organ == organ.Organ);
            if (arteries.TryGetValue(anchor.Segment, out ArterialReading? artery))
            {
                Point at = anchor.Organ is ArterialOrgan.LegRight or ArterialOrgan.LegLeft ? ArterialPaper.Middle(artery.Course) : ArterialPaper.At(artery.Course[^1]);
                labels.Add(new TreeLabel([.. ArterialText.Organ(organ), .. Leg(result, organ.Organ)], at, anchor.OnLeft, Colour.Ink));
            }
        }

        if (result.ReturnSegment is string entry && arteries.TryGetValue(entry, out ArterialReading? entered))
        {
            Point at = ArterialPaper.Middle(entered.Course);
            labels.Add(new TreeLabel(
                ["Pump returns here", string.Create(CultureInfo.InvariantCulture, $"{result.PumpFlowLPerMin:F1} L/min, {result.ReturnInWords}")],
                at, at.X < ArterialPaper.WidthMm / 2, Colour.Return));
        }

        if (result.Mixing is { HalfOnDrawing: LayoutPoint half } mixing)
        {
            labels.Add(new TreeLabel(
                [
                    "Half from each",
                    string.Create(CultureInfo.InvariantCulture, $"{mixing.HalfCm.Mean:F0} cm from the valve, {mixing.HalfCm.Lowest:F0} to {mixing.HalfCm.Highest:F0} over the beat"),
                    string.Create(CultureInfo.InvariantCulture, $"{mixing.MeanHalfCm.Low:F0} to {mixing.MeanHalfCm.High:F0} with what is uncertain"),
                ],
                ArterialPaper.At(half), half.X < 50, Colour.Refused));
        }

        return labels;
    }

    private static IEnumerable<string> Leg(ArterialSupportResult result, ArterialOrgan organ)
    {
        Anatomy.Body.BodySide? side = organ switch
        {
            ArterialOrgan.LegRight => Anatomy.Body.BodySide.Right,
            ArterialOrgan.LegLeft => Anatomy.Body.BodySide.Left,
            _ => null,
        };
        return result.Limbs.Where(l => l.Side == side).Select(static l => string.Create(
            CultureInfo.InvariantCulture, $"{(l.Supply == LimbSupply.Starved ? "■ " : l.Supply == LimbSupply.Borderline ? "▲ " : string.Empty)}{ArterialText.Supply(l.Supply)}: needs {l.NeedMlPerMin.Value:F0} mL/min ({l.NeedMlPerMin.Low:F0} to {l.NeedMlPerMin.High:F0})"));
    }

    private static IEnumerable<(string Words, bool Bold)> Foot(ArterialSupportResult result) =>
    [
        (ArterialText.Mixing(result.Mixing), false),
        .. result.Settling.BloodSettled ? Array.Empty<(string, bool)>() : [(ArterialText.NotSettled, true)],
        (result.Sampling.InWords, false),
        (ArterialText.Heart(result.Heart), false),
        ("A scheme, not to scale; numbers are of a model of this patient's size, not measured in the patient. What the blood carries is checked by sampling.", false),
        ("Supports trained clinicians; not a certified medical device. It defers to imaging, the device's instructions for use, local protocol and licensed practice.", true),
    ];
}
