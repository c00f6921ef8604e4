using Cavaxis.Course.Explanations.Knowledge;
using Cavaxis.Course.Explanations.Trends;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Tests.Explanations;

public class ChangeDetectorTests
{
    private const int Courses = 200;
    private const double Now = 20;
    private static readonly ObservedQuantity[] Watched =
    [
        ObservedQuantity.MeanArterialPressureMmHg, ObservedQuantity.CentralVenousPressureMmHg, ObservedQuantity.RightArmSaturationPercent, ObservedQuantity.PumpFlowLPerMin,
        ObservedQuantity.InletPressureMmHg, ObservedQuantity.PreMembraneSaturationPercent, ObservedQuantity.LactateMmolPerL, ObservedQuantity.HeartRatePerMin,
    ];

    [Fact]
    public void Noise_alone_raises_an_alarm_no_oftener_than_told()
    {
        int alarms = Enumerable.Range(0, Courses).Count(seed => ChangeDetector.Find(Series(seed, 0, 0), Now, TrendSpans.Usual).Hour is not null);

        // Binomial: 200 courses at one in a hundred give 2 ± 1.4; in 99 of 100 suites at most 6.
        Assert.InRange(alarms, 0, 6);
    }

    // A median of twelve errs by 0.36 of a reading and by 0.3 for what readings share: a step of three is 4.5 of the two errors together against a limit of 4.3 for
    // one in a hundred over all times, seen in six of ten series; one of three sees it in nineteen of twenty, and the time must be right too. A step of four lies two errors beyond.
    [Theory]
    [InlineData(3, 0.75)]
    [InlineData(4, 0.9)]
    public void A_step_in_three_quantities_is_found_near_its_time(double spreads, double least)
    {
        DetectedChange[] found = [.. Enumerable.Range(0, Courses).Select(seed => ChangeDetector.Find(Series(seed, 3, spreads), Now, TrendSpans.Usual))];
        double share = found.Count(static f => f.Hour is double hour && Math.Abs(hour - 14) <= 1.5) / (double)Courses;
        Assert.InRange(share, least, 1);
        Assert.All(found.Where(static f => f.Hour is not null), static f => Assert.NotEmpty(f.Changes));
    }

    [Fact]
    public void One_wrong_reading_raises_no_alarm()
    {
        int alarms = Enumerable.Range(0, Courses).Count(seed =>
        {
            TrendSeries[] series = Series(seed, 0, 0);
            TimedReading[] readings = [.. series[0].Readings];
            int at = seed % readings.Length;
            readings[at] = readings[at] with { Value = readings[at].Value + (12 * readings[at].Sd) };
            series[0] = series[0] with { Readings = [.. readings] };
            return ChangeDetector.Find(series, Now, TrendSpans.Usual).Hour is not null;
        });
        Assert.InRange(alarms, 0, 6);
    }

    [Fact]
    public void Windows_hold_the_medians_and_leave_out_what_is_stale()
    {
        TrendSeries flow = new(ObservedQuantity.PumpFlowLPerMin, [new(1, 4.0, 0.1), new(2, 4.1, 0.1), new(3, 4.2, 0.1), new(11, 3.5, 0.1), new(11.5, 9, 0.1), new(11.8, 3.4, 0.1)]);
        TrendSeries gas = new(ObservedQuantity.RightArmPo2MmHg, [new(1, 80, 5), new(2, 84, 5)]);
        TrendSeries later = new(ObservedQuantity.LactateMmolPerL, [new(30, 2, 0.3)]);
        TrendWindow window = ChangeDetector.Windows(SupportKind.VenoVenous, [flow, gas, later], 10, 12, [], TrendSpans.Usual);
        Assert.Equal(2, window.Signs.Length);
        Assert.Equal(4.1, window.Signs[0].Before!.Value, 9);
        Assert.Equal(3.5, window.Signs[0].Now!.Value, 9);
        Assert.InRange(window.Signs[0].Before!.Sd, 0.05, 0.1);
        Assert.Null(window.Signs[1].Now);
        Assert.Equal(10, window.Signs[1].LastReadHoursAgo!.Value, 9);
        Assert.Equal(82, window.Signs[1].Before!.Value, 9);
    }

    [Fact]
    public void A_reading_since_the_change_stands_for_now_until_it_is_stale()
    {
        TrendSeries gas = new(ObservedQuantity.RightArmPo2MmHg, [new(1, 80, 5), new(11, 60, 5)]);
        Assert.Equal(60, ChangeDetector.Windows(SupportKind.VenoVenous, [gas], 10, 15, [], TrendSpans.Usual).Signs[0].Now!.Value, 9);
        Assert.Null(ChangeDetector.Windows(SupportKind.VenoVenous, [gas], 10, 18, [], TrendSpans.Usual).Signs[0].Now);
    }

    /// <summary>Readings every half hour to two hours from hour 6 to 20, some quantities stepping at hour 14.</summary>
    private static TrendSeries[] Series(int seed, int stepping, double spreads)
    {
        Random random = new(seed);
        return [.. Watched.Select((quantity, i) =>
        {
            double sd = QuantityTable.Of(quantity).UsualSd;
            double every = 0.5 + (0.25 * (i % 4));
            double level = 50;
            double step = i < stepping ? spreads * sd : 0;
            return new TrendSeries(quantity, [.. Enumerable.Range(0, (int)(14 / every)).Select(k => 6 + (k * every))
                .Select(hour => new TimedReading(hour, level + (hour >= 14 ? step : 0) + (sd * InventedPatients.Normal(random)), sd))]);
        })];
    }
}
