using System.Collections.Immutable;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Reasoning;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Planning.Case;

namespace Cavaxis.Bedside.Readouts;

/// <summary>What changed in the course of a patient, and what may be behind it.</summary>
/// <param name="Change">Whether and when something changed.</param>
/// <param name="Report">Explanations.</param>
public sealed record CourseTrend(DetectedChange Change, ExplanationReport Report)
{
    private static readonly (SettingKind Setting, ObservedQuantity Quantity)[] Settings =
    [
        (SettingKind.PumpSpeed, ObservedQuantity.PumpSpeedPerMin),
        (SettingKind.Sweep, ObservedQuantity.SweepLPerMin),
        (SettingKind.SweepOxygen, ObservedQuantity.SweepOxygenFraction),
        (SettingKind.InspiredOxygen, ObservedQuantity.InspiredOxygenFraction),
        (SettingKind.Peep, ObservedQuantity.PeepCmH2O),
    ];

    /// <summary>The trend of a course.</summary>
    /// <param name="course">The course.</param>
    /// <param name="now">The moment; what was read later does not count.</param>
    /// <returns>The trend; null where no support runs or nothing was observed under it.</returns>
    public static CourseTrend? Of(PatientCourse course, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(course);
        if (course.Running is not SupportRun run || course.Series.Count == 0)
        {
            return null;
        }

        DateTimeOffset from = run.Started.OccurredAt;
        TrendSeries[] series = [.. course.Series.Values
            .Select(s => new TrendSeries(s.Quantity, [.. s.Points.Where(p => p.At >= from && p.At <= now).Select(p => new TimedReading((p.At - from).TotalHours, p.Value, p.Sd))]))
            .Where(static s => s.Readings.Length > 0)];
        double hour = (now - from).TotalHours;
        DetectedChange change = ChangeDetector.Find(series, hour, TrendSpans.Usual);
        double at = change.Hour ?? hour - TrendSpans.Usual.NowHours;
        TrendWindow window = ChangeDetector.Windows(Kind(run.Configuration), series, at, hour, SettingsChanged(series, at, hour), TrendSpans.Usual);
        return window.Signs.IsEmpty ? null : new CourseTrend(change, Explainer.Explain(window));
    }

    private static ImmutableArray<SettingChange> SettingsChanged(TrendSeries[] series, double at, double hour) =>
    [
        .. from known in Settings
           let readings = series.FirstOrDefault(s => s.Quantity == known.Quantity)?.Readings ?? []
           where readings.Any(r => r.Hour < at) && readings.Any(r => r.Hour >= at && r.Hour <= hour)
           let before = readings.Where(r => r.Hour < at).MaxBy(static r => r.Hour).Value
           let after = readings.Where(r => r.Hour <= hour).MaxBy(static r => r.Hour).Value
           where before != after
           select new SettingChange(known.Setting, before, after),
    ];

    private static SupportKind Kind(RunningConfiguration configuration) => configuration switch
    {
        RunningConfiguration.VvTwoSite or RunningConfiguration.VvDualLumen => SupportKind.VenoVenous,
        RunningConfiguration.VavFemoral => SupportKind.VenoArterialVenous,
        _ => SupportKind.VenoArterial,
    };
}
