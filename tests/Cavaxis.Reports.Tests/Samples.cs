using Cavaxis.Reports.AxisDrawings;
using Cavaxis.Reports.Charts;
using Cavaxis.Reports.Documents;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Tests;

/// <summary>Drawings, scenes and reports that several tests look at. The numbers are made up to be drawn, not to be true.</summary>
internal static class Samples
{
    internal const string Caution = "For trained clinicians: verify every position by imaging before you act.";

    public static TheoryData<string> HostileTexts =>
    [
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='x",
        "]]></svg><script>",
        "&lt;already&amp;escaped",
        "</title></style></head><body>",
        "nul\0bell\a escape\u001b[2J",
        "half \ud800 surrogate",
        "turned \u202eround\u2066",
        "line\r\nfeeds\tand tabs",
        "{{template}} ${x} %s <%= y %>",
        "\uffff\ufffe",
    ];

    internal static Drawing EveryItem()
    {
        var style = new Style { Stroke = Colour.Ink, Fill = Colour.Lumen, Hatch = Hatch.Crossed, Dash = Dash.DashDot, Opacity = 0.5 };
        return new Drawing(100, 80, "Every item", "One of each kind.",
        [
            new Line(new(1, 1), new(9.12345, 9), style),
            new Polyline([new(1, 1), new(2, 5), new(-0.0001, 9)], style),
            new Polygon([new(20, 20), new(40, 20), new(30, 40)], style),
            new Rectangle(new Box(50, 20, 60, 30), style, 1),
            new Circle(new(70, 20), 5, style),
            new Arrow(new(10, 50), new(30, 50), style),
            new Text(new(50, 50), "Words", 9, TextAnchor.Middle, Bold: true),
            new Text(new(10, 60), "Turned", 9, TextAnchor.End, -90),
        ]);
    }

    internal static LineChart Chart() =>
        new LineChart("Pressure drop against flow", "A rising curve.", new ChartAxis("Flow", "L/min"), new ChartAxis("Pressure drop", "mmHg"))
            .With(new ChartBand("9 of 10", [new(0, 0, 2), new(3, 15, 30), new(6, 70, 118)]))
            .With(new ChartSeries("Drainage 23 Fr", [new(0, 0), new(3, 24), new(6, 94)]))
            .With(new Threshold("Suction limit", 80, ThresholdKind.Limit))
            .With(new Threshold("Flow needed", 4.2, ThresholdKind.Target, OnX: true))
            .With(new OperatingPoint("Planned point", 4.4, 52, 4.1, 4.8, 44, 61));

    internal static Spread Round(double middle, double half) => new(middle, middle - half, middle + half);

    internal static AxisScene Scene(double k, double wide) => new()
    {
        Title = "Axis",
        Description = "The axis of the veins.",
        Segments =
        [
            new(SegmentKind.SuperiorVenaCava, "SVC", -68 * k, 0, Round(20 * k, 4 * k), -3 * k),
            new(SegmentKind.RightAtrium, "Right atrium", 0, 52 * k, Round(45 * k, 7 * k), 0, 6 * k),
            new(SegmentKind.InferiorVenaCava, "IVC, upper", 52 * k, 80 * k, Round(24 * k, 5 * k), 6 * k, 7 * k),
            new(SegmentKind.InferiorVenaCava, "IVC", 80 * k, 265 * k, Round(21 * k, 4 * k), 7 * k, 2 * k),
        ],
        Landmarks =
        [
            new(LandmarkKind.Other, "Brachiocephalic confluence", Round(-68 * k, 11 * k * wide)),
            new(LandmarkKind.Junction, "Superior cavo-atrial junction (SCAJ)", Spread.Exact(0)),
            new(LandmarkKind.TricuspidValve, "Tricuspid valve, middle", Round(30 * k, 8 * k * wide)),
            new(LandmarkKind.Junction, "Inferior cavo-atrial junction", Round(52 * k, 10 * k * wide)),
            new(LandmarkKind.Diaphragm, "Diaphragm", Round(60 * k, 12 * k * wide)),
            new(LandmarkKind.HepaticVein, "Right hepatic vein, upper edge", Round(72 * k, 13 * k * wide)),
            new(LandmarkKind.RenalVeins, "Renal veins", Round(160 * k, 22 * k * wide)),
            new(LandmarkKind.Other, "Iliac confluence", Round(265 * k, 28 * k * wide)),
        ],
        Tricuspid = new TricuspidOpening(30 * k, 36 * k, 30 * k),
        Entries =
        [
            new(EntrySite.RightNeck, "Right jugular skin entry", Round(-152 * k, 15 * k)),
            new(EntrySite.RightGroin, "Right femoral skin entry", Round(440 * k, 30 * k)),
            new(EntrySite.LeftGroin, "Left femoral skin entry", Round(455 * k, 32 * k)),
        ],
        Note = "Anatomy estimated from height, weight, age and sex.",
    };

    internal static ReportDocument Report(int rows = 3) => new("Cannulation plan", "Adult, V-V support", Caution,
    [
        new Heading(2, "Summary"),
        new Paragraph("The plan drains from the right femoral vein."),
        new Callout(CalloutKind.Stop, "Left femoral vein is thrombosed", "Choose another site."),
        new Callout(CalloutKind.Information, "Sources", "See the last page."),
        new BulletList(["first step", "second step"], Numbered: true),
        new Heading(3, "Pressure"),
        new Figure(Chart().Build(), "Pressure drop.", "A rising curve crosses the limit at 5.6 L/min."),
        new Table(
            "Every row",
            [new("Name"), new("Value (mmHg)", ColumnAlign.Right), new("Why")],
            [.. Enumerable.Range(1, rows).Select(i => (IReadOnlyList<string>)[$"Row {i}", $"{i * 3}", "because it is so"])]),
        new PageBreak(),
        new Heading(2, "Axis"),
        new Figure(AxisDrawing.Of(Scene(1, 1)), "Axis to scale.", "The veins from neck to groin."),
    ]);

    internal static ReportDocument HostileReport(string hostile) => new(hostile, hostile, hostile,
    [
        new Heading(2, hostile),
        new Paragraph(hostile),
        new Callout(CalloutKind.Warning, hostile, hostile),
        new BulletList([hostile]),
        new Table(hostile, [new(hostile), new(hostile)], [[hostile, hostile]]),
        new Figure(new Drawing(50, 20, hostile, hostile, [new Text(new(1, 5), hostile, 8)]), hostile, "alt " + hostile),
    ])
    {
        Language = hostile,
    };

    internal static void AssertNoTextOverlaps(Drawing drawing)
    {
        (string Words, Box Bounds)[] texts = [.. drawing.Items.OfType<Text>().Select(t => (t.Content, TextMetrics.BoundsOf(t)))];
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = i + 1; j < texts.Length; j++)
            {
                Assert.False(texts[i].Bounds.Overlaps(texts[j].Bounds, 0.05), $"\"{texts[i].Words}\" overlaps \"{texts[j].Words}\"");
            }
        }
    }
}
