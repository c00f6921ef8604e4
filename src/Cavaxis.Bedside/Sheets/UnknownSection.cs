using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.OnePage;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Sheets;

/// <summary>What the record does not tell. Unknown is never taken for normal.</summary>
internal static class UnknownSection
{
    private static readonly ObservedQuantity[] Wanted =
    [
        PumpFlowLPerMin, PumpSpeedPerMin, SweepLPerMin, InletPressureMmHg, PreMembranePressureMmHg, PostMembranePressureMmHg, RightArmSaturationPercent, RightArmPco2MmHg,
        PreMembraneSaturationPercent, PostMembranePo2MmHg, MeanArterialPressureMmHg, HaemoglobinGPerDl, LactateMmolPerL,
    ];

    /// <summary>The section.</summary>
    public static PageSection Of(CourseReading reading, CourseTrend? trend, DateTimeOffset now)
    {
        PatientCourse course = reading.Course;
        List<PageRow> rows = [];
        int unread = reading.Unread.Count + reading.Spoiled.Count;
        if (unread > 0)
        {
            rows.Add(PageRow.Of(string.Create(CultureInfo.InvariantCulture, $"{unread} {(unread == 1 ? "entry" : "entries")} of this record could not be read and {(unread == 1 ? "stands" : "stand")} nowhere on this sheet."), true));
        }

        string[] never = [.. Wanted.Where(q => course.Series.GetValueOrDefault(q)?.AsOf(now, TimeSpan.MaxValue) is null).Select(static q => QuantityTable.Of(q).Words)];
        string[] old = [.. Wanted.Where(q => course.Series.GetValueOrDefault(q)?.AsOf(now, TimeSpan.MaxValue) is SeriesPoint p && now - p.At > ReadingsAtHand.Stale).Select(static q => QuantityTable.Of(q).Words)];
        Add(rows, "Never read: ", never);
        Add(rows, string.Create(CultureInfo.InvariantCulture, $"Not read in the last {ReadingsAtHand.Stale.TotalHours:0} h: "), old);
        Add(rows, "No image shows where they lie: ", [.. course.CannulaeIn.Where(static c => c.LastImaged is null).Select(static c => c.Name)]);
        if (trend is not null)
        {
            Add(rows, "Counted neither way for the causes: ", [.. trend.Report.Missing.Select(static m => m.Words)]);
        }

        Add(rows, "Not in this record: ",
        [
            .. course.Case is null ? new[] { "a case" } : [],
            .. course.Plan is null ? new[] { "a plan" } : [],
            .. course.All<AnticoagulationSet>().Count == 0 ? new[] { "anticoagulation" } : [],
            .. course.All<ImagingDone>().Count == 0 ? new[] { "imaging" } : [],
        ]);
        return new PageSection("Not known", rows.Count == 0 ? [PageRow.Of("Nothing of what this sheet asks for; much that it does not ask for.")] : rows) { Least = 3, Elsewhere = "the record" };
    }

    private static void Add(List<PageRow> rows, string before, string[] names)
    {
        if (names.Length > 0)
        {
            rows.Add(PageRow.Of($"{before}{string.Join(", ", names)}."));
        }
    }
}
