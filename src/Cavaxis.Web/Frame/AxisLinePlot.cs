using System.Globalization;
using Cavaxis.Reports.AxisDrawings;

namespace Cavaxis.Web.Frame;

/// <summary>Turns the scene of a plan into the outlines of the slim line at the side. One unit of the picture is one millimetre of the patient.</summary>
/// <param name="scene">The scene.</param>
internal sealed class AxisLinePlot(AxisScene scene)
{
    /// <summary>Half the width of the picture, mm.</summary>
    public const double HalfWidth = 72;

    /// <summary>Left edge, mm: the words stand there, clear of the atrium.</summary>
    public const double Left = -88;

    private const double Above = 30;
    private const double Below = 40;
    private const double BelowTip = 12;

    /// <summary>Upper edge, mm along the axis.</summary>
    public double Top { get; } = scene.Segments[0].TopMm - Above;

    /// <summary>Lower edge, mm along the axis: some way below the renal veins, and below every tip. What lies lower is left to the whole drawing.</summary>
    public double Bottom { get; } = Math.Max(
        scene.Landmarks.Select(static l => l.PositionMm.Median).DefaultIfEmpty(scene.Segments[^1].BottomMm).Max() + Below,
        scene.Cannulae.Select(static c => c.TipMm.Median).DefaultIfEmpty(0).Max() + BelowTip);

    /// <summary>The window of the picture.</summary>
    public string ViewBox => Invariant($"{Left:F0} {Top:F1} {HalfWidth - Left:F0} {Bottom - Top:F1}");

    /// <summary>The outline of the trunk. Seen from the front: the patient's right is on the left.</summary>
    public string Trunk
    {
        get
        {
            AxisSegment upper = scene.Segments.First(s => s.Kind == SegmentKind.SuperiorVenaCava);
            AxisSegment atrium = scene.Segments.First(s => s.Kind == SegmentKind.RightAtrium);
            AxisSegment lower = scene.Segments.First(s => s.Kind == SegmentKind.InferiorVenaCava);
            double a = upper.LumenDiameterMm.Median / 2;
            double b = lower.LumenDiameterMm.Median / 2;
            double reach = scene.Tricuspid?.DistanceMm ?? b;
            double middle = (atrium.TopMm + atrium.BottomMm) / 2;
            double right = Math.Max(a, b) + 6;
            return Invariant($"M {upper.LateralTopMm - a:F1} {upper.TopMm:F1} L {atrium.LateralTopMm - a:F1} {atrium.TopMm:F1} ")
                + Invariant($"Q {atrium.LateralTopMm - right:F1} {middle:F1} {atrium.LateralBottomMm - b:F1} {atrium.BottomMm:F1} ")
                + Invariant($"L {Lateral(End) - b:F1} {End:F1} L {Lateral(End) + b:F1} {End:F1} ")
                + Invariant($"L {atrium.LateralBottomMm + b:F1} {atrium.BottomMm:F1} ")
                + Invariant($"C {atrium.LateralBottomMm + reach:F1} {atrium.BottomMm - 4:F1} {atrium.LateralTopMm + reach:F1} {atrium.TopMm + 4:F1} {atrium.LateralTopMm + a:F1} {atrium.TopMm:F1} ")
                + Invariant($"L {upper.LateralTopMm + a:F1} {upper.TopMm:F1} Z");
        }
    }

    /// <summary>Sideways place of the middle of the axis, mm toward the patient's left.</summary>
    public double Lateral(double z)
    {
        foreach (AxisSegment s in scene.Segments.Where(s => z <= s.BottomMm))
        {
            double share = s.BottomMm > s.TopMm ? Math.Clamp((z - s.TopMm) / (s.BottomMm - s.TopMm), 0, 1) : 0;
            return s.LateralTopMm + (share * (s.LateralBottomMm - s.LateralTopMm));
        }

        return scene.Segments[^1].LateralBottomMm;
    }

    /// <summary>The way of a cannula from the edge of the picture to its tip.</summary>
    public string Way(SceneCannula cannula)
    {
        bool neck = cannula.Entry is EntrySite.RightNeck or EntrySite.LeftNeck;
        double side = cannula.Entry is EntrySite.RightNeck or EntrySite.RightGroin ? -1 : 1;
        double edge = neck ? Top : Bottom;
        double mouth = neck ? scene.Segments[0].TopMm : End;
        double shift = side * 4;
        List<string> points = [Invariant($"M {(neck ? side * 26 : Lateral(mouth) + shift):F1} {edge:F1} L {Lateral(mouth) + shift:F1} {mouth:F1}")];
        double step = neck ? 6 : -6;
        for (double z = mouth; neck ? z < cannula.TipMm.Median : z > cannula.TipMm.Median; z += step)
        {
            points.Add(Invariant($"L {Lateral(z) + shift:F1} {z:F1}"));
        }

        points.Add(Invariant($"L {Lateral(cannula.TipMm.Median) + shift:F1} {cannula.TipMm.Median:F1}"));
        return string.Join(' ', points);
    }

    /// <summary>Sideways place of a cannula at a height: two of them lie side by side.</summary>
    public double Beside(SceneCannula cannula, double z) => Lateral(z) + (cannula.Entry is EntrySite.RightNeck or EntrySite.RightGroin ? -4 : 4);

    /// <summary>A number for an attribute of the picture.</summary>
    public static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A short word for a landmark.</summary>
    /// <param name="landmark">The landmark.</param>
    public static string Short(AxisLandmark landmark) => landmark.Kind switch
    {
        LandmarkKind.Junction => landmark.Name.Contains("superior", StringComparison.Ordinal) ? "SCAJ" : "ICAJ",
        LandmarkKind.TricuspidValve => "tricuspid",
        LandmarkKind.HepaticVein => "hepatic",
        LandmarkKind.RenalVeins => "renal",
        _ => landmark.Name,
    };

    /// <summary>Where the trunk is cut or ends.</summary>
    private double End => Math.Min(Bottom, scene.Segments[^1].BottomMm);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
