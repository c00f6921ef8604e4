using Cavaxis.Course.GasExchange;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.GasExchange;

public class DilutionTests
{
    private static readonly double[] Times = [.. Enumerable.Range(0, 241).Select(static i => 0.25 * i)];

    private static readonly DilutionWindow Passage = new(10, 40);

    [Fact]
    public void A_bolus_on_a_sloping_baseline_has_its_own_area() => Gen.Select(Gen.Double[0.2, 5], Gen.Double[-3, 3], Gen.Double[-0.05, 0.05], Gen.Double[1.2, 3]).Sample(static (height, offset, slope, width) =>
    {
        double[] signal = [.. Times.Select(t => offset + (slope * t) + (height * Math.Exp(-0.5 * Math.Pow((t - 25) / width, 2))))];
        Assert.Equal(height * width * Math.Sqrt(2 * Math.PI), DilutionCurve.Area(Times, signal, Passage).Value, 3e-4 * height * width);
    });

    [Fact]
    public void The_error_of_an_area_is_that_of_repeats()
    {
        Drawn drawn = new(5);
        double truth = 2 * 3 * Math.Sqrt(2 * Math.PI);
        const int Repeats = 3000;
        int covered = 0;
        for (int i = 0; i < Repeats; i++)
        {
            double[] signal = [.. Times.Select(t => drawn.Normal(1 + (2 * Math.Exp(-0.5 * Math.Pow((t - 25) / 3, 2))), 0.1))];
            Estimate area = DilutionCurve.Area(Times, signal, Passage);
            covered += area.Low <= truth && truth <= area.High ? 1 : 0;
        }

        Assert.Equal(0.9, covered / (double)Repeats, Drawn.Slack(Repeats) + 0.005);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void Repeats_cover_the_truth_nine_times_of_ten(int injections)
    {
        Drawn drawn = new(9 + injections);
        const int Repeats = 4000;
        int covered = 0;
        for (int i = 0; i < Repeats; i++)
        {
            RecirculationMeasurement measured = DilutionRecirculation.Of(
                [.. Enumerable.Range(0, injections).Select(_ => new DilutionInjection(Exact(10), Exact(drawn.Normal(2.5, 0.2))))]);
            covered += measured.Percent is null || (measured.Percent.Low <= 25 && 25 <= measured.Percent.High) ? 1 : 0;
        }

        Assert.Equal(0.9, covered / (double)Repeats, Drawn.Slack(Repeats));
    }

    [Fact]
    public void One_injection_carries_the_error_of_the_method()
    {
        RecirculationMeasurement one = DilutionRecirculation.Of([new(Exact(10), Exact(2))]);
        Assert.Equal(20, one.Percent!.Value, 9);
        Assert.Equal(DilutionRecirculation.SingleSdPoints, one.Percent.Sd, 9);
        Assert.Contains(one.Cautions, static c => c.Contains("single injection", StringComparison.Ordinal));
        Assert.Contains("one injection", one.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Injections_that_disagree_give_no_number()
    {
        RecirculationMeasurement measured = DilutionRecirculation.Of([new(Exact(10), Exact(1)), new(Exact(10), Exact(4))]);
        Assert.False(measured.IsTold);
        Assert.Contains("disagree", measured.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_an_area_is_refused()
    {
        Assert.Throws<InputFaultException>(static () => new DilutionInjection(Exact(0), Exact(0)));
        Assert.Throws<InputFaultException>(static () => DilutionRecirculation.Of([]));
        Assert.Equal(FaultCode.TooFewPoints, Fault(new(0.2, 40)));
        Assert.Equal(FaultCode.TooFewPoints, Fault(new(10, 59.9)));
        Assert.Equal(FaultCode.Contradiction, Fault(new(40, 10)));
        Assert.Equal(FaultCode.Contradiction, Fault(new(80, 90)));
        double[] broken = (double[])Times.Clone();
        broken[7] = broken[6];
        Assert.Equal("timeS[7]", Assert.Throws<InputFaultException>(() => DilutionCurve.Area(broken, Times, Passage)).Faults[0].Field);
    }

    [Theory]
    [InlineData(1, 6.314)]
    [InlineData(10, 1.812)]
    [InlineData(12, 1.782)]
    [InlineData(30, 1.697)]
    public void Students_quantiles_are_those_of_the_table(int freedom, double t) => Assert.Equal(t, DilutionRecirculation.Quantile(freedom), 1e-3);

    private static FaultCode Fault(DilutionWindow window) => Assert.Throws<InputFaultException>(() => DilutionCurve.Area(Times, Times, window)).Faults[0].Code;

    private static Estimate Exact(double value) => Estimate.Normal(value, 0, Origin.Measured);
}
