using System.Globalization;
using Cavaxis.Imaging.Measurement;
using Cavaxis.Quantities;

namespace Cavaxis.Web.Pages.Images;

/// <summary>Words of measuring in an image.</summary>
internal static class MeasureWords
{
    /// <summary>The tools in the order in which they stand.</summary>
    public static IReadOnlyList<(MeasureTool Tool, string Name, string How)> Tools { get; } =
    [
        (MeasureTool.Distance, "Distance", "Point at both ends."),
        (MeasureTool.Course, "Curved distance", "Point along the course; a smooth curve is laid through the points."),
        (MeasureTool.Area, "Area", "Point around the outline, in order."),
        (MeasureTool.Angle, "Angle", "Point on one line, where the lines meet, and on the other line."),
        (MeasureTool.Breath, "Diameter over the breath", "Point at both walls on this frame; the walls are then followed through the loop."),
        (MeasureTool.Spectrum, "Doppler envelope", "The envelope is traced; points that you set from left to right replace that part of it."),
        (MeasureTool.KnownLength, "Known length", "Point at both ends of something whose length you know, such as two marks of a cannula."),
    ];

    /// <summary>What was measured.</summary>
    public static string Name(MeasurementKind kind) => kind switch
    {
        MeasurementKind.VelocityTimeIntegral => "Velocity-time integral",
        MeasurementKind.CurvedDistance => "Curved distance",
        MeasurementKind.MotionDepth => "Depth between two walls",
        MeasurementKind.PeakVelocity => "Fastest speed",
        MeasurementKind.MeanVelocity => "Mean speed over the beat",
        MeasurementKind.BeatRate => "Rate of the beats seen",
        MeasurementKind.StrokeVolume => "Stroke volume",
        _ => kind.ToString(),
    };

    /// <summary>The number with its interval and where it comes from.</summary>
    public static string Value(ImageMeasurement one) => Value(one.Value, one.Unit);

    /// <summary>The number with its standard deviation, as it is written into a case.</summary>
    public static string Short(ImageMeasurement one) => $"{Number(one.Value.Value, one.Value.Sd)} ± {Number(one.Value.Sd, one.Value.Sd)} {one.Unit}";

    /// <summary>A number with its interval and where it comes from.</summary>
    public static string Value(Estimate value, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{Number(value.Value, value.Sd)} {unit} (90 % interval {Number(value.Low, value.Sd)} to {Number(value.High, value.Sd)}), {value.Origin.ToString().ToLowerInvariant()}");

    /// <summary>As many digits as the error leaves: two of the standard deviation's.</summary>
    private static string Number(double value, double sd)
    {
        int digits = sd > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(sd)), 0, 4) : 2;
        return Math.Round(value, digits).ToString($"F{digits}", CultureInfo.InvariantCulture).Replace('-', '−');
    }
}
