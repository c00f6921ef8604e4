using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.Readouts;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Reports.OnePage;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Sheets;

/// <summary>The last reading of what matters at a handover, each with error, unit, time and origin.</summary>
internal static class NowSection
{
    /// <summary>What stands first, in this order; the other quantities are in the full report.</summary>
    public static IReadOnlyList<ObservedQuantity> Shown { get; } =
    [
        PumpFlowLPerMin, PumpSpeedPerMin, SweepLPerMin, SweepOxygenFraction, InspiredOxygenFraction, InletPressureMmHg, PreMembranePressureMmHg, PostMembranePressureMmHg,
        RightArmSaturationPercent, RightArmPo2MmHg, RightArmPco2MmHg, RightArmPh, PreMembraneSaturationPercent, PostMembraneSaturationPercent, PostMembranePo2MmHg, PostMembranePco2MmHg,
        MeanArterialPressureMmHg, CentralVenousPressureMmHg, HeartRatePerMin, HaemoglobinGPerDl, LactateMmolPerL, CannulatedLimbSaturationPercent, UrineMlPerH, TemperatureCelsius,
    ];

    private static readonly TimeSpan SameTime = TimeSpan.FromMinutes(10);

    /// <summary>The section.</summary>
    public static PageSection Of(PatientCourse course, DateTimeOffset now)
    {
        List<PageRow> rows = [];
        foreach (ObservedQuantity quantity in Shown)
        {
            if (course.Series.GetValueOrDefault(quantity)?.AsOf(now, TimeSpan.MaxValue) is SeriesPoint point)
            {
                string old = now - point.At > ReadingsAtHand.Stale ? " (old)" : string.Empty;
                rows.Add(new PageRow([QuantityTable.Of(quantity).Words, SheetWords.Value(quantity, point), $"{SheetWords.Short(point.At)}{old}", SheetWords.From(point)]));
            }

            if (quantity == PostMembranePressureMmHg && Drop(course, now) is PageRow drop)
            {
                rows.Add(drop);
            }
        }

        // A quantity that stands in the record with nothing but later readings has none for this moment.
        int besides = course.Series.Values.Count(s => !Shown.Contains(s.Quantity) && s.AsOf(now, TimeSpan.MaxValue) is not null);
        return rows.Count == 0
            ? new PageSection("What runs now", [PageRow.Of("Nothing was read.")]) { Besides = besides, Elsewhere = "the full report, readings" }
            : new PageSection("What runs now: last readings", rows, 3.2, 2.4, 1.9, 1.5) { Heads = ["quantity", "value ± error", "read (UTC)", "origin"], Besides = besides, Elsewhere = "the full report, readings", Least = 9 };
    }

    private static PageRow? Drop(PatientCourse course, DateTimeOffset now) =>
        course.Series.GetValueOrDefault(PreMembranePressureMmHg)?.AsOf(now, TimeSpan.MaxValue) is SeriesPoint before
        && course.Series.GetValueOrDefault(PostMembranePressureMmHg)?.AsOf(now, TimeSpan.MaxValue) is SeriesPoint after
        && (before.At - after.At).Duration() <= SameTime
            ? new PageRow(["pressure drop over the membrane lung", $"{SheetWords.Number(before.Value - after.Value)} ± {SheetWords.Number(Math.Round(double.Hypot(before.Sd, after.Sd), 1))} mmHg", SheetWords.Short(before.At), "calculated"])
            : null;
}
