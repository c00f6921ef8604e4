using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Quantities.Tests;

public class WilsonShareTests
{
    private static readonly Gen<(int Count, int Of)> Counted = Gen.Int[1, 2000].SelectMany(static of => Gen.Int[0, of].Select(count => (count, of)));

    [Fact]
    public void An_interval_lies_between_nought_and_one_and_holds_the_share() => Gen.Select(Counted, Gen.Double[0.1, 4]).Sample(static (counted, z) =>
    {
        (double low, double high) = WilsonShare.Limits(counted.Count, counted.Of, z);
        double p = counted.Count / (double)counted.Of;
        Assert.True(low >= 0 && high <= 1 && low <= p && p <= high && low < high);
    });

    [Fact]
    public void Both_ends_rise_with_the_count() => Counted.Where(static c => c.Count < c.Of).Sample(static counted =>
    {
        (double low, double high) = WilsonShare.Limits(counted.Count, counted.Of, WilsonShare.NormalQuantile975);
        (double lowNext, double highNext) = WilsonShare.Limits(counted.Count + 1, counted.Of, WilsonShare.NormalQuantile975);
        Assert.True(lowNext > low && highNext > high);
    });

    [Fact]
    public void More_belief_and_fewer_counted_widen_the_interval() => Counted.Sample(static counted =>
    {
        Estimate ninety = WilsonShare.Of(counted.Count, counted.Of);
        (double low, double high) = WilsonShare.Limits(counted.Count, counted.Of, WilsonShare.NormalQuantile975);
        Assert.True(low <= ninety.Low && high >= ninety.High);
        (double lowTen, double highTen) = WilsonShare.Limits(10 * counted.Count, 10 * counted.Of, WilsonShare.NormalQuantile975);
        Assert.True(highTen - lowTen < high - low);
    });

    [Fact]
    public void Every_end_is_a_share_that_the_count_just_does_not_refute() => Counted.Where(static c => c.Count > 0 && c.Count < c.Of).Sample(static counted =>
    {
        double p = counted.Count / (double)counted.Of;
        (double low, double high) = WilsonShare.Limits(counted.Count, counted.Of, 2);
        Assert.Equal(2, (p - low) / Math.Sqrt(low * (1 - low) / counted.Of), 6);
        Assert.Equal(2, (high - p) / Math.Sqrt(high * (1 - high) / counted.Of), 6);
    });

    [Theory]
    [InlineData(1, 0)]
    [InlineData(-1, 5)]
    [InlineData(6, 5)]
    public void Counts_that_cannot_be_are_refused(int count, int of) =>
        Assert.Throws<InputFaultException>(() => WilsonShare.Of(count, of));
}
