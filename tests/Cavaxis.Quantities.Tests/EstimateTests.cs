using CsCheck;

namespace Cavaxis.Quantities.Tests;

public class EstimateTests
{
    [Fact]
    public void The_normal_interval_holds_nine_tenths()
    {
        // Φ(1.6449) = 0.95 (standard normal table).
        Estimate estimate = Estimate.Normal(10, 2, Origin.Measured);
        Assert.Equal(10 - 3.2897, estimate.Low, 4);
        Assert.Equal(10 + 3.2897, estimate.High, 4);
        Assert.Equal(Origin.Measured, estimate.Origin);
    }

    [Fact]
    public void The_quantile_follows_the_published_type_seven()
    {
        // Hyndman and Fan 1996, type 7: h = (n − 1) p; for 1..5 and p = 0.3, h = 1.2, so 2 + 0.2.
        double[] sorted = [1, 2, 3, 4, 5];
        Assert.Equal(2.2, Estimate.Quantile(sorted, 0.3), 12);
        Assert.Equal(1, Estimate.Quantile(sorted, 0));
        Assert.Equal(5, Estimate.Quantile(sorted, 1));
        Assert.Equal(7, Estimate.Quantile([7], 0.9));
    }

    [Fact]
    public void Samples_give_median_and_sample_deviation()
    {
        // 2, 4, 4, 4, 5, 5, 7, 9: mean 5, squares 32, sample variance 32/7; median 4.5.
        double[] samples = [9, 4, 2, 5, 4, 7, 4, 5];
        double[] copy = [.. samples];
        Estimate estimate = Estimate.FromSamples(samples, Origin.Calculated);
        Assert.Equal(4.5, estimate.Value, 12);
        Assert.Equal(Math.Sqrt(32 / 7.0), estimate.Sd, 12);
        Assert.Equal(copy, samples);
    }

    [Fact]
    public void Low_value_and_high_stand_in_order_for_any_samples() => Gen.Double[-1e6, 1e6].Array[2, 50].Sample(samples =>
    {
        Estimate estimate = Estimate.FromSamples(samples, Origin.Estimated);
        return estimate.Low <= estimate.Value && estimate.Value <= estimate.High && estimate.Sd >= 0
            && estimate.Low >= samples.Min() && estimate.High <= samples.Max();
    });

    [Fact]
    public void A_quantile_never_falls_with_its_probability() => Gen.Select(Gen.Double[-100, 100].Array[1, 30], Gen.Double[0, 1], Gen.Double[0, 1])
        .Sample((values, p, q) =>
        {
            Array.Sort(values);
            return Estimate.Quantile(values, Math.Min(p, q)) <= Estimate.Quantile(values, Math.Max(p, q));
        });

    [Theory]
    [InlineData(double.NaN, 1, 0, 2)]
    [InlineData(double.PositiveInfinity, 1, 0, 2)]
    [InlineData(1, -0.1, 0, 2)]
    [InlineData(1, double.NaN, 0, 2)]
    [InlineData(1, 1, 2, 0)]
    [InlineData(1, 1, double.NaN, 2)]
    [InlineData(1, 1, 0, double.PositiveInfinity)]
    public void An_estimate_that_cannot_be_is_not_built(double value, double sd, double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Estimate.WithInterval(value, sd, low, high, Origin.Calculated));

    [Fact]
    public void A_single_sample_has_no_spread_and_is_refused() =>
        Assert.Throws<ArgumentException>(() => Estimate.FromSamples([1.0], Origin.Calculated));

    [Fact]
    public void Values_in_order_give_the_same_estimate_as_in_any_order()
    {
        Assert.Equal(Estimate.FromSamples([3, 1, 2, 9], Origin.Calculated), Estimate.FromSorted([1, 2, 3, 9], Origin.Calculated));
        Assert.Equal(Estimate.WithInterval(8, 0, 8, 8, Origin.Estimated), Estimate.FromSorted([8], Origin.Estimated));
        Assert.Throws<ArgumentException>(() => Estimate.FromSorted([], Origin.Estimated));
    }
}
