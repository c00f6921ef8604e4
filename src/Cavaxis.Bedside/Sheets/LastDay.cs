using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.OnePage;

namespace Cavaxis.Bedside.Sheets;

/// <summary>Small trends of the last day.</summary>
internal static class LastDay
{
    /// <summary>Hours drawn.</summary>
    public const double Hours = 24;

    /// <summary>Heading.</summary>
    public const string Title = "Last 24 h: readings with their error (calculated lines are none)";

    /// <summary>A trend for each quantity that was read at least twice in the last day: those of the sheet first, then the others.</summary>
    public static IReadOnlyList<SmallTrend> Of(PatientCourse course, DateTimeOffset now) =>
    [
        .. from series in course.Series.Values
           let points = series.Points.Where(p => p.At <= now && p.At >= now - TimeSpan.FromHours(Hours)).ToArray()
           where points.Length >= 2
           orderby NowSection.Shown.Contains(series.Quantity) ? 0 : 1, Place(series.Quantity)
           select new SmallTrend(SheetWords.Named(series.Quantity), $"{SheetWords.Value(series.Quantity, points[^1])}, {SheetWords.Ago(points[^1].At, now)}", [.. points.Select(p => new TrendDot((now - p.At).TotalHours, p.Value, p.Sd))], Hours),
    ];

    private static int Place(ObservedQuantity quantity)
    {
        for (int i = 0; i < NowSection.Shown.Count; i++)
        {
            if (NowSection.Shown[i] == quantity)
            {
                return i;
            }
        }

        return NowSection.Shown.Count + (int)quantity;
    }
}
