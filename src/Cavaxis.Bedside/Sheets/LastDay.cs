using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.OnePage;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Sheets;

/// <summary>Small trends of the last day.</summary>
internal static class LastDay
{
    /// <summary>What is drawn first: what a failing circuit or patient shows, before what people set.</summary>
    private static readonly ObservedQuantity[] First =
    [
        PumpFlowLPerMin, InletPressureMmHg, PreMembranePressureMmHg, RightArmSaturationPercent, MeanArterialPressureMmHg, LactateMmolPerL, RightArmPco2MmHg, PreMembraneSaturationPercent,
        CentralVenousPressureMmHg, HeartRatePerMin, PumpSpeedPerMin, SweepLPerMin, CannulatedLimbSaturationPercent, HaemoglobinGPerDl,
    ];

    /// <summary>Hours drawn.</summary>
    public const double Hours = 24;

    /// <summary>Heading.</summary>
    public const string Title = "Last 24 h: readings, each with its error";

    /// <summary>A trend for each quantity that was read at least twice in the last day: those of the sheet first, then the others.</summary>
    public static IReadOnlyList<SmallTrend> Of(PatientCourse course, DateTimeOffset now) =>
    [
        .. from series in course.Series.Values
           let points = series.Points.Where(p => p.At <= now && p.At >= now - TimeSpan.FromHours(Hours)).ToArray()
           where points.Length >= 2
           orderby Place(series.Quantity)
           select new SmallTrend(QuantityTable.Of(series.Quantity).Words, $"{SheetWords.Value(series.Quantity, points[^1])}, {SheetWords.Ago(points[^1].At, now)}", [.. points.Select(p => new TrendDot((now - p.At).TotalHours, p.Value, p.Sd))], Hours),
    ];

    private static int Place(ObservedQuantity quantity) => Array.IndexOf(First, quantity) is int at and >= 0 ? at : First.Length + (int)quantity;
}
