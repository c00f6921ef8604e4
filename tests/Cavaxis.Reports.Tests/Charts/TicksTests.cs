using Cavaxis.Reports.Charts;
using CsCheck;

namespace Cavaxis.Reports.Tests.Charts;

public class TicksTests
{
    [Fact]
    public void Linear_ticks_cover_the_range_in_even_nice_steps() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-4, 1e6], Gen.Int[2, 12]).Sample(t =>
        {
            (double low, double span, int wanted) = t;
            Ticks ticks = Ticks.Linear(low, low + span, wanted);
            double step = ticks.Values[1] - ticks.Values[0];
            double mantissa = step / Math.Pow(10, Math.Floor(Math.Log10(step * 1.000001)));
            Assert.Contains(new[] { 1.0, 2, 5 }, m => Math.Abs(m - mantissa) < 1e-3);
            Assert.True(ticks.Low <= low + (step * 1e-6) && ticks.High >= low + span - (step * 1e-6));
            Assert.InRange(ticks.Values.Count, 2, wanted + 2);
            Assert.Equal(ticks.Values.Count, ticks.Values.Select(ticks.Label).Distinct().Count());
        });

    [Fact]
    public void Printed_ticks_are_short() =>
        Assert.Equal(["0.0", "0.1", "0.2", "0.3"], Ticks.Linear(0, 0.3, 4).Values.Select(Ticks.Linear(0, 0.3, 4).Label));

    [Fact]
    public void A_single_value_gets_an_axis_round_it()
    {
        Ticks ticks = Ticks.Linear(80, 80);
        Assert.True(ticks.Low < 80 && ticks.High > 80);
        Assert.True(Ticks.Linear(0, 0).Low < 0);
    }

    [Fact]
    public void Logarithmic_ticks_are_one_two_five_over_few_decades_and_decades_over_many()
    {
        Assert.Equal([0.5, 1, 2, 5, 10, 20], Ticks.Logarithmic(0.6, 18).Values);
        Assert.Equal([0.01, 0.1, 1, 10, 100, 1000], Ticks.Logarithmic(0.03, 400).Values);
        Assert.Equal("0.01", Ticks.Logarithmic(0.03, 400).Label(0.01));
    }

    [Fact]
    public void Logarithmic_ticks_cover_the_range() =>
        Gen.Select(Gen.Double[-6, 6], Gen.Double[0, 6]).Sample(t =>
        {
            double low = Math.Pow(10, t.Item1);
            double high = low * Math.Pow(10, t.Item2);
            Ticks ticks = Ticks.Logarithmic(low, high);
            Assert.True(ticks.Low <= low * (1 + 1e-6) && ticks.High >= high * (1 - 1e-6) && ticks.Values.Count >= 2);
        });

    [Theory]
    [InlineData(double.NaN, 1)]
    [InlineData(2, 1)]
    [InlineData(0, double.PositiveInfinity)]
    public void A_range_that_is_none_is_refused(double low, double high) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ticks.Linear(low, high));

    [Fact]
    public void Zero_has_no_place_on_a_logarithmic_axis() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Ticks.Logarithmic(0, 1));
}
