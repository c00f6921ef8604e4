using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities;

namespace Cavaxis.Course.Explanations.Trends;

/// <summary>From series of readings to the two windows that are explained, and whether anything changed at all.</summary>
public static class ChangeDetector
{
    /// <summary>Chance of a false alarm over all series and times together, as far as readings err as their spreads say.</summary>
    public const double FalseAlarm = 0.01;

    // One outlier must not outweigh readings that agree on a time.
    private const double MostOfOne = 4;

    // The median of three withstands one wrong reading; of fewer it cannot be told from a change.
    private const int LeastReadings = 3;
    private const double SameHour = 1e-9;

    /// <summary>The two windows around a time.</summary>
    /// <param name="support">Kind of support.</param>
    /// <param name="series">Series, one for each quantity.</param>
    /// <param name="changeHour">Time of the change; readings at that time belong to now.</param>
    /// <param name="nowHour">The present.</param>
    /// <param name="settings">Settings that were changed between.</param>
    /// <param name="spans">Lengths.</param>
    /// <returns>Medians before and now; a quantity whose last reading is too old has none now and says how old it is.</returns>
    public static TrendWindow Windows(
        SupportKind support, IReadOnlyList<TrendSeries> series, double changeHour, double nowHour, ImmutableArray<SettingChange> settings, TrendSpans spans)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(spans);
        return new TrendWindow(support, [.. series.Select(s => Window(s, changeHour, nowHour, spans)).OfType<ObservedSign>()], settings);
    }

    /// <summary>
    /// Looks for the one time that parts the readings best: at each time between readings, the medians before and after are compared over
    /// their errors; of the times with a clear change the one is taken from whose two medians the readings lie least far. A quantity counts as changed where that beats chance over all times and series looked at (Bonferroni). Each side needs three readings, so that one wrong one raises no alarm.
    /// </summary>
    /// <param name="series">Series, one for each quantity.</param>
    /// <param name="nowHour">The present; later readings are left out.</param>
    /// <param name="spans">Lengths.</param>
    /// <returns>The change, or that there is none beyond noise.</returns>
    public static DetectedChange Find(IReadOnlyList<TrendSeries> series, double nowHour, TrendSpans spans)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(spans);
        double from = nowHour - spans.BeforeHours - spans.NowHours;
        TrendSeries[] recent = [.. series.Select(s => s with { Readings = [.. s.Readings.Where(r => r.Hour >= from && r.Hour <= nowHour).OrderBy(static r => r.Hour)] }).Where(static s => s.Readings.Length > 1)];
        double[] hours = [.. recent.SelectMany(static s => s.Readings.Select(static r => r.Hour)).Order()];
        double[] times = [.. hours.Zip(hours.Skip(1)).Where(static x => x.Second - x.First > SameHour).Select(static x => 0.5 * (x.First + x.Second)).Distinct()];
        double limit = times.Length == 0 ? double.PositiveInfinity : Quantile(FalseAlarm / (2.0 * times.Length * recent.Length));
        (double Hour, double Score, SeriesChange[] Changes) best = (0, 0, []);
        foreach (double hour in times)
        {
            (SeriesChange Change, double Z)[] all = [.. recent.Select(s => Compare(s, hour)).OfType<(SeriesChange Change, double Z)>()];
            (SeriesChange Change, double Z)[] clear = [.. all.Where(c => c.Z > limit).OrderByDescending(static c => c.Z)];
            double score = clear.Length == 0 ? 0 : 1 / recent.Sum(s => Misfit(s, hour));
            if (score > best.Score)
            {
                best = (hour, score, [.. clear.Select(static c => c.Change)]);
            }
        }

        return best.Changes.Length == 0
            ? new DetectedChange(null, [], "No change beyond the noise of the readings.")
            : new DetectedChange(best.Hour, [.. best.Changes], string.Create(
                CultureInfo.InvariantCulture, $"About {nowHour - best.Hour:F1} h ago {best.Changes.Length} of {recent.Length} quantities changed, first of all the {QuantityTable.Of(best.Changes[0].Quantity).Words}."));
    }

    /// <summary>Point that a standard normal variable exceeds with a small probability: the logarithm of its tail, ln(φ(x)/x (1 − 1/x²)), by halving.</summary>
    private static double Quantile(double tail)
    {
        (double low, double high) = (1.5, 12);
        for (int i = 0; i < 60; i++)
        {
            double x = 0.5 * (low + high);
            double probability = Math.Exp(-0.5 * x * x) / (x * Math.Sqrt(2 * Math.PI)) * (1 - (1 / (x * x)) + (3 / (x * x * x * x)));
            (low, high) = probability > tail ? (x, high) : (low, x);
        }

        return high;
    }

    private static (SeriesChange Change, double Z)? Compare(TrendSeries series, double hour)
    {
        TimedReading[] first = [.. series.Readings.Where(r => r.Hour < hour)];
        TimedReading[] second = [.. series.Readings.Where(r => r.Hour >= hour)];
        if (first.Length < LeastReadings || second.Length < LeastReadings || WindowMedian.Of(first) is not Estimate before || WindowMedian.Of(second) is not Estimate after)
        {
            return null;
        }

        double change = after.Value - before.Value;
        double sd = Math.Sqrt((before.Sd * before.Sd) + (after.Sd * after.Sd));
        QuantityDefinition words = QuantityTable.Of(series.Quantity);
        string unit = words.Unit == "1" ? string.Empty : " " + words.Unit;
        string sentence = string.Create(CultureInfo.InvariantCulture, $"The {words.Words} changed from {before.Value:0.##} to {after.Value:0.##}{unit} (± {sd:0.##}).");
        return (new SeriesChange(series.Quantity, change, sd, sentence), Math.Abs(change) / sd);
    }

    /// <summary>How far the readings lie from the medians of their sides, in spreads, each at most so far: sharper in time than the medians themselves.</summary>
    private static double Misfit(TrendSeries series, double hour)
    {
        double sum = 1e-9;
        foreach (TimedReading[] side in (TimedReading[][])[[.. series.Readings.Where(r => r.Hour < hour)], [.. series.Readings.Where(r => r.Hour >= hour)]])
        {
            double middle = WindowMedian.Of(side)?.Value ?? 0;
            sum += side.Sum(r => Math.Min(MostOfOne, Math.Abs(r.Value - middle) / r.Sd));
        }

        return sum;
    }

    private static ObservedSign? Window(TrendSeries series, double changeHour, double nowHour, TrendSpans spans)
    {
        TimedReading[] past = [.. series.Readings.Where(r => r.Hour <= nowHour)];
        Estimate? before = WindowMedian.Of([.. past.Where(r => r.Hour < changeHour && r.Hour >= changeHour - spans.BeforeHours)]);
        TimedReading[] after = [.. past.Where(r => r.Hour >= changeHour)];
        TimedReading[] recent = [.. after.Where(r => r.Hour >= nowHour - spans.NowHours)];

        // Where the window now is empty the last reading since the change stands for it, unless it is stale.
        TimedReading[] last = recent.Length > 0 || after.Length == 0 ? recent : [after.MaxBy(static r => r.Hour)];
        double? age = past.Length == 0 ? null : nowHour - past.Max(static r => r.Hour);
        bool stale = last.Length == 0 || age > spans.StaleHours;
        Estimate? now = stale ? null : WindowMedian.Of(last);
        return before is null && now is null ? null : new ObservedSign(series.Quantity, before, now, stale ? age : null);
    }
}
