using System.Globalization;
using System.Text.Json;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Placing;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Web.Frame;

namespace Cavaxis.Web.Pages.Lie;

/// <summary>Places everything in the large drawing of the axis. One unit of the picture is one millimetre of the patient.</summary>
internal sealed class LiePlot
{
    private const double Gap = 2.5;
    private readonly AxisScene scene;
    private readonly AxisLinePlot line;
    private readonly double trunk;

    /// <summary>Lays the picture out.</summary>
    /// <param name="scene">The scene of the plan.</param>
    /// <param name="zones">Number of zones that are told beside the trunk.</param>
    public LiePlot(AxisScene scene, int zones)
    {
        this.scene = scene;
        line = new AxisLinePlot(scene);
        Unit = (line.Bottom - line.Top) / 100;
        trunk = Math.Max(30, scene.Segments.Max(static s => s.LumenDiameterMm.High) / 2);
        trunk = Math.Max(trunk, (scene.Tricuspid?.DistanceMm ?? 0) + 4);
        Left = -trunk - (34 * Unit);
        Right = trunk + ((3 + (6.5 * zones)) * Unit);
        Landmarks = Stacked();
    }

    /// <summary>A hundredth of the height: text and strokes grow with the patient, so that a child's picture reads as well.</summary>
    public double Unit { get; }

    /// <summary>Left edge, mm.</summary>
    public double Left { get; }

    /// <summary>Right edge, mm.</summary>
    public double Right { get; }

    /// <summary>Upper edge, mm along the axis.</summary>
    public double Top => line.Top;

    /// <summary>Lower edge, mm along the axis.</summary>
    public double Bottom => line.Bottom;

    /// <summary>The window of the picture.</summary>
    public string ViewBox => FormattableString.Invariant($"{Left:F1} {Top:F1} {Right - Left:F1} {Bottom - Top:F1}");

    /// <summary>Outline of the trunk.</summary>
    public string Trunk => line.Trunk;

    /// <summary>Landmarks with the heights of their labels, which keep clear of each other.</summary>
    public IReadOnlyList<(AxisLandmark Landmark, double LabelMm)> Landmarks { get; }

    /// <summary>Length of the scale bar, mm: a round length of about a fifth of the height.</summary>
    public double ScaleMm => Bottom - Top > 250 ? 50 : 20;

    /// <summary>Middle of the axis at a height.</summary>
    /// <param name="z">mm along the axis.</param>
    public double Lateral(double z) => line.Lateral(z);

    /// <summary>Place of the column of a zone.</summary>
    /// <param name="index">Number of the zone.</param>
    public double Column(int index) => trunk + ((4.5 + (6.5 * index)) * Unit);

    /// <summary>Edge of the trunk's own room.</summary>
    public double TrunkEdge => trunk;

    /// <summary>What the browser needs to draw a cannula by itself.</summary>
    /// <param name="cannula">The cannula in the scene.</param>
    /// <param name="placed">The same in the plan.</param>
    /// <param name="ports">Where it lies.</param>
    /// <param name="deepestCm">How far it can be advanced.</param>
    /// <param name="canTurn">Whether turning it means anything.</param>
    public string Shape(SceneCannula cannula, PlacedCannula placed, PlacedPorts ports, double deepestCm, bool canTurn)
    {
        bool neck = placed.Route == AccessRoute.Jugular;
        double side = cannula.Entry is EntrySite.RightNeck or EntrySite.RightGroin ? -1 : 1;
        return JsonSerializer.Serialize(new
        {
            role = placed.Role.ToString(),
            direction = neck ? 1 : -1,
            depthCm = ports.Place.DepthCm,
            plannedCm = placed.Fit!.PlannedDepthCm.Value,
            turnDeg = ports.Place.TurnDeg,
            deepestCm = Math.Floor(deepestCm * 10) / 10,
            canTurn,
            tipMm = ports.TipBelowScajMm.Value,
            edgeMm = neck ? Top : Bottom,
            mouthMm = neck ? scene.Segments[0].TopMm : scene.Segments[^1].BottomMm,
            startMm = side * 26,
            shiftMm = side * 4,
            lateral = scene.Segments.SelectMany(static s => new[] { new[] { s.TopMm, s.LateralTopMm }, [s.BottomMm, s.LateralBottomMm] }),
            ports = cannula.Ports.Select(p => new
            {
                fromTip = Math.Abs(p.PositionMm.Median - cannula.TipMm.Median),
                half = Math.Max(1.2 * Unit * 0.8, p.SpanMm / 2),
                drains = p.Purpose == LumenPurpose.Drainage,
                side = p.Facing is PortFacing.TowardTricuspid or PortFacing.Unknown,
            }),
        });
    }

    /// <summary>A number for an attribute.</summary>
    /// <param name="value">mm.</param>
    public static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A landmark in few words.</summary>
    /// <param name="landmark">The landmark.</param>
    public static string Name(AxisLandmark landmark) => landmark.Kind switch
    {
        LandmarkKind.Junction => landmark.Name.Contains("superior", StringComparison.Ordinal) ? "SCAJ" : "ICAJ",
        LandmarkKind.TricuspidValve => "tricuspid, middle",
        LandmarkKind.HepaticVein => "hepatic vein",
        LandmarkKind.RenalVeins => "renal veins",
        _ => landmark.Name,
    };

    /// <summary>Position and interval of a landmark in words.</summary>
    /// <param name="spread">mm below SCAJ.</param>
    public static string Words(Spread spread) => spread.Low == spread.High
        ? FormattableString.Invariant($"{spread.Median:F0} mm")
        : FormattableString.Invariant($"{spread.Median:F0} mm ({spread.Low:F0} to {spread.High:F0})");

    private List<(AxisLandmark, double)> Stacked()
    {
        List<(AxisLandmark Landmark, double LabelMm)> labels = [];
        double free = double.NegativeInfinity;
        foreach (AxisLandmark landmark in scene.Landmarks.OrderBy(static l => l.PositionMm.Median))
        {
            double at = Math.Max(landmark.PositionMm.Median, free);
            labels.Add((landmark, at));
            free = at + ((4 + Gap) * Unit);
        }

        return labels;
    }
}
