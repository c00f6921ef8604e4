using System.Globalization;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>Scale and columns of the drawing: labels, bands, body axis, ruler, bands, labels.</summary>
internal sealed record AxisFrame
{
    /// <summary>Width of the paper, mm: A4 less two margins of 18 mm.</summary>
    internal const double PaperWidth = 174;

    /// <summary>Greatest height of trunk and stubs, mm, so that the whole fits on one A4 page with caption and heading.</summary>
    internal const double MostTrunkHeight = 170;

    /// <summary>Length of a side vessel's stub on the paper, mm.</summary>
    internal const double StubMm = 13.5;

    /// <summary>Right edge of the left labels.</summary>
    internal const double LeftLabels = 46;

    /// <summary>Left edge of the landmark bands.</summary>
    internal const double LeftLanes = 50.5;

    /// <summary>Left edge of the body.</summary>
    internal const double BodyLeft = 63;

    /// <summary>Middle of the body: place of the zero offset.</summary>
    internal const double BodyMiddle = 84;

    /// <summary>Right edge of the body.</summary>
    internal const double BodyRight = 116;

    /// <summary>Place of the ruler.</summary>
    internal const double Ruler = 119.5;

    /// <summary>Left edge of the port bands.</summary>
    internal const double RightLanes = 122.5;

    /// <summary>Left edge of the right labels.</summary>
    internal const double RightLabels = 137;

    private const double BesideValveMm = 13;
    private const double BodyTop = 10.5;

    private static readonly double[] Scales = [0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10, 15, 20];

    private AxisFrame(double scale, double zTop, double zBottom) =>
        (Scale, ZTop, ZBottom, TrunkTop) = (scale, zTop, zBottom, BodyTop + StubMm);

    /// <summary>Millimetres of the patient in a millimetre of paper.</summary>
    internal double Scale { get; }

    /// <summary>Upper end of the trunk on the axis, mm.</summary>
    internal double ZTop { get; }

    /// <summary>Lower end of the trunk on the axis, mm.</summary>
    internal double ZBottom { get; }

    /// <summary>Upper end of the trunk on the paper, mm.</summary>
    internal double TrunkTop { get; }

    /// <summary>Lower end of the trunk on the paper, mm.</summary>
    internal double TrunkBottom => Y(ZBottom);

    /// <summary>Upper edge of what may be drawn beside the body.</summary>
    internal static double Top => BodyTop;

    /// <summary>Lower edge of what may be drawn beside the body.</summary>
    internal double Bottom => TrunkBottom + StubMm;

    /// <summary>The scale as printed.</summary>
    internal string ScaleWords => Scale < 1
        ? string.Create(CultureInfo.InvariantCulture, $"{1 / Scale:0.##} : 1")
        : string.Create(CultureInfo.InvariantCulture, $"1 : {Scale:0.##}");

    /// <summary>The largest standard scale at which the scene fits.</summary>
    /// <param name="scene">A checked scene.</param>
    /// <returns>The frame.</returns>
    internal static AxisFrame For(AxisScene scene)
    {
        double top = scene.Segments[0].TopMm;
        double bottom = scene.Segments[^1].BottomMm;
        double reach = scene.Tricuspid?.DistanceMm ?? 0;
        double sideways = scene.Segments.Max(s => Math.Max(Math.Abs(s.LateralTopMm), Math.Abs(s.LateralBottomMm)));
        double widest = scene.Segments.Where(s => s.Kind != SegmentKind.RightAtrium).Max(s => s.LumenDiameterMm.High);
        foreach (double scale in Scales)
        {
            bool fits = (bottom - top) / scale <= MostTrunkHeight
                && (sideways + reach) / scale <= BodyRight - BodyMiddle - BesideValveMm
                && (sideways + (widest / 2)) / scale <= BodyMiddle - BodyLeft - 6;
            if (fits)
            {
                return new AxisFrame(scale, top, bottom);
            }
        }

        throw new ArgumentException("The trunk is too large for any standard scale.");
    }

    /// <summary>Paper place of a position on the axis.</summary>
    internal double Y(double z) => TrunkTop + ((z - ZTop) / Scale);

    /// <summary>Paper place of a position, kept within the drawing.</summary>
    internal double ClampedY(double z) => Math.Clamp(Y(z), Top, Bottom);

    /// <summary>Paper place of an offset toward the patient's left.</summary>
    internal double X(double lateral) => BodyMiddle + (lateral / Scale);
}
