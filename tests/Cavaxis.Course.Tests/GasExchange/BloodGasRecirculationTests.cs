using Cavaxis.Blood.Mixing;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Course.GasExchange;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.GasExchange;

public class BloodGasRecirculationTests
{
    private static readonly BloodConstants K = BloodConstants.Default;
    private static readonly BloodConditions C = BloodConditions.Standard;

    /// <summary>Recirculation, venous saturation, haemoglobin, tension after the lung.</summary>
    private static readonly Gen<(double R, double Venous, double Haemoglobin, double PostPo2)> Mixings =
        Gen.Select(Gen.Double[0, 0.9], Gen.Double[0.2, 0.85], Gen.Double[6, 18], Gen.Double[90, 650]);

    [Fact]
    public void Any_mixture_that_conserves_oxygen_gives_its_recirculation_back_by_content() => Mixings.Sample(static m =>
    {
        RecirculationMeasurement measured = BloodGasRecirculation.ByContent(Readings(m, Exact));
        Assert.Equal(m.R, measured.Percent!.Value / 100, 9);
        Assert.Equal(RecirculationMethod.Content, measured.Method);
    });

    [Fact]
    public void Saturations_alone_never_give_too_little_and_more_too_much_at_a_higher_tension() => Mixings.Where(static m => m.R > 0.02).Sample(static m =>
    {
        double bias = SaturationMethodBias.Points(m.R, m.Venous, m.Haemoglobin, m.PostPo2, C, K);
        double higher = SaturationMethodBias.Points(m.R, m.Venous, m.Haemoglobin, m.PostPo2 + 50, C, K);
        Assert.True(bias > -1e-9 && higher > bias, $"{bias} {higher}");
        Assert.Equal(100 * m.R, BloodGasRecirculation.BySaturation(Readings(m, Exact)).Percent?.Value - bias ?? 100 * m.R, 6);
    });

    [Fact]
    public void The_bias_that_is_told_is_the_one_that_there_is() => Mixings.Where(static m => m.R is > 0.05 and < 0.6 && m.Venous < 0.7).Sample(static m =>
    {
        RecirculationReadings readings = Readings(m, Exact);
        double by = BloodGasRecirculation.BySaturation(readings).Percent!.Value;
        double told = SaturationMethodBias.Estimate(readings, by / 100)!.Value;
        Assert.Equal(by - (100 * m.R), told, 1e-6);
    });

    [Fact]
    public void Pulmonary_artery_blood_hides_recirculation_and_the_correction_brings_it_back() => Gen.Select(Mixings, Gen.Double[0.2, 1]).Sample(static (m, flowOverOutput) =>
    {
        double returned = flowOverOutput * (1 - m.R);
        double venous = Content(m.Venous, m.Haemoglobin);
        double post = OxygenContent.FromPo2(m.Haemoglobin, m.PostPo2, C, K);
        double artery = (returned * post) + ((1 - returned) * venous);
        double pre = (m.R * post) + ((1 - m.R) * venous);
        if (post - artery < 0.05)
        {
            return;
        }

        double apparent = (pre - artery) / (post - artery);
        Assert.True(apparent <= m.R + 1e-9);
        Assert.Equal(m.R, PulmonaryArteryCorrection.Fraction(apparent, flowOverOutput), 9);
    });

    [Theory]
    [InlineData(0.3, 60, 98)]
    [InlineData(0.1, 70, 99)]
    [InlineData(0.5, 50, 99)]
    public void The_interval_by_saturation_covers_the_truth_in_nine_repeats_of_ten(double r, double venous, double post)
    {
        Drawn drawn = new(20261128);
        const int Repeats = 4000;
        int covered = 0;
        for (int i = 0; i < Repeats; i++)
        {
            Estimate percent = BloodGasRecirculation.BySaturation(new(
                new(drawn.Read(venous + (r * (post - venous)), 1.2)), new(Unclipped(drawn, post, 0.4)), new(new(drawn.Read(venous, 1.5)), VenousSite.DrainageWithSweepOff))).Percent!;
            covered += percent.Low <= 100 * r && 100 * r <= percent.High ? 1 : 0;
        }

        Assert.Equal(0.9, covered / (double)Repeats, Drawn.Slack(Repeats));
    }

    [Fact]
    public void The_interval_by_content_covers_the_truth_in_nine_repeats_of_ten()
    {
        Drawn drawn = new(77);
        const int Repeats = 4000;
        int covered = 0;
        for (int i = 0; i < Repeats; i++)
        {
            double pre = BloodMixing.Mix([Flow(0.3, 0.99, 400), Flow(0.7, 0.62, 33)], C, K).OxygenContentMlPerDl;
            double preSaturation = 100 * (pre - (K.OxygenSolubilityMlPerDlPerMmHg * 43)) / (K.HuefnerMlPerG * 10);
            RecirculationReadings readings = new(
                new(drawn.Read(preSaturation, 1), drawn.Read(43, 1)), new(Unclipped(drawn, 99, 0.3), drawn.Read(400, 15)),
                new(new(drawn.Read(62, 1), drawn.Read(33, 1)), VenousSite.DrainageWithSweepOff), drawn.Read(10, 0.3));
            Estimate percent = BloodGasRecirculation.ByContent(readings).Percent!;
            covered += percent.Low <= 30 && 30 <= percent.High ? 1 : 0;
        }

        Assert.Equal(0.9, covered / (double)Repeats, Drawn.Slack(Repeats));
    }

    [Fact]
    public void Error_to_first_order_and_by_sampling_agree()
    {
        Estimate percent = BloodGasRecirculation.BySaturation(new(
            new(Read(76, 2)), new(Read(99, 0.5)), new(new(Read(64, 2)), VenousSite.DrainageWithSweepOff))).Percent!;
        Estimate sampled = Propagation.Through([Read(76, 2), Read(99, 0.5), Read(64, 2)], static x => 100 * (x[0] - x[2]) / (x[1] - x[2]))!;
        Assert.Equal(sampled.Sd, percent.Sd, 0.15);
        Assert.Equal(sampled.Low, percent.Low, 0.6);
        Assert.Equal(sampled.High, percent.High, 0.6);
    }

    [Theory]
    [InlineData(95, 2, "cannot be told apart")]
    [InlineData(99, 1, "cannot be told apart")]
    [InlineData(85, 4, "wider than 60 points")]
    public void A_small_difference_to_divide_by_gives_no_number(double venous, double sd, string because)
    {
        RecirculationMeasurement measured = BloodGasRecirculation.BySaturation(new(
            new(Read((venous + 99) / 2, sd)), new(Read(99, sd)), new(new(Read(venous, sd)), VenousSite.UpperCava)));
        Assert.False(measured.IsTold);
        Assert.Null(measured.Fraction);
        Assert.Contains(because, measured.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_criterion_turns_at_its_threshold()
    {
        // g = z²·var(D)/D²; with sd s on post and venous, var(D) = 2 s².
        double turn = Estimate.NormalQuantile95 * Math.Sqrt(2) * 2;
        Assert.Equal(1, RatioWithError.Of(1, turn, 8, 8, 4).G, 12);
        Assert.True(double.IsInfinity(RatioWithError.Of(1, turn * 0.999, 8, 8, 4).High));
        Assert.True(double.IsFinite(RatioWithError.Of(1, turn * 1.001, 8, 8, 4).High));
        Assert.True(double.IsInfinity(RatioWithError.Of(1, -50, 8, 8, 4).G));
    }

    [Fact]
    public void Readings_that_contradict_each_other_are_called_so() =>
        Assert.Contains("contradict", BloodGasRecirculation.BySaturation(new(
            new(Read(55, 1)), new(Read(99, 0.5)), new(new(Read(70, 1)), VenousSite.PulmonaryArtery))).Words, StringComparison.Ordinal);

    [Fact]
    public void What_was_not_read_is_asked_for_by_name()
    {
        OxygenSample pre = new(Read(76, 2));
        VenousSample venous = new(new(Read(64, 2)), VenousSite.UpperCava);
        Assert.Contains("haemoglobin", BloodGasRecirculation.ByContent(new(pre, new(Read(99, 1), Read(400, 15)), venous)).Words, StringComparison.Ordinal);
        Assert.Contains("after the membrane lung", BloodGasRecirculation.ByContent(new(pre, new(Read(99, 1)), venous, Read(10, 0.3))).Words, StringComparison.Ordinal);
        Assert.True(BloodGasRecirculation.ByContent(new(pre, new(Read(99, 1), Read(400, 15)), venous, Read(10, 0.3))).IsTold);
    }

    [Fact]
    public void The_site_of_the_venous_sample_is_told_and_its_spread_widens_the_interval()
    {
        OxygenSample pre = new(Read(76, 2));
        OxygenSample post = new(Read(99, 0.5));
        RecirculationMeasurement off = BloodGasRecirculation.BySaturation(new(pre, post, new(new(Read(60, 2)), VenousSite.DrainageWithSweepOff)));
        RecirculationMeasurement cava = BloodGasRecirculation.BySaturation(new(pre, post, new(new(Read(60, 2)), VenousSite.UpperCava)));
        Assert.True(cava.Percent!.Sd > 1.3 * off.Percent!.Sd);
        Assert.Contains(cava.Cautions, static c => c.Contains("too low", StringComparison.Ordinal));
        Assert.Contains(off.Cautions, static c => c.Contains("Dissolved", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(101)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_saturation_that_cannot_be_is_refused(double percent)
    {
        ArgumentException? notFinite = Record.Exception(() => Read(percent, 1)) as ArgumentException;
        Assert.True(notFinite is not null || Assert.Throws<InputFaultException>(() => new OxygenSample(Read(percent, 1))).Faults[0].Field == "saturationPercent");
    }

    [Fact]
    public void A_pulmonary_artery_sample_is_corrected_with_its_error()
    {
        RecirculationMeasurement apparent = BloodGasRecirculation.BySaturation(new(
            new(Read(78, 1)), new(Read(99, 0.5)), new(new(Read(76, 1)), VenousSite.PulmonaryArtery)));
        RecirculationMeasurement corrected = PulmonaryArteryCorrection.Apply(apparent, Read(4, 0.1), Read(6, 0.6));
        Assert.True(corrected.Percent!.Value > apparent.Percent!.Value);
        Assert.Equal(100 * PulmonaryArteryCorrection.Fraction(apparent.Percent.Value / 100, 4.0 / 6), corrected.Percent.Value, 9);
        Assert.True(corrected.Percent.Low < corrected.Percent.Value && corrected.Percent.Value < corrected.Percent.High);
    }

    private static RecirculationReadings Readings((double R, double Venous, double Haemoglobin, double PostPo2) m, Func<double, Estimate> read)
    {
        double venousPo2 = OxygenDissociation.Po2At(m.Venous, C);
        MixedBlood pre = BloodMixing.Mix(
        [
            new(m.R, m.Haemoglobin, OxygenContent.FromPo2(m.Haemoglobin, m.PostPo2, C, K)),
            new(1 - m.R, m.Haemoglobin, OxygenContent.FromPo2(m.Haemoglobin, venousPo2, C, K)),
        ], C, K);
        return new(
            new(read(100 * pre.Saturation), read(pre.Po2MmHg)), new(read(100 * OxygenDissociation.SaturationAt(m.PostPo2, C)), read(m.PostPo2)),
            new(new(read(100 * m.Venous), read(venousPo2)), VenousSite.DrainageWithSweepOff), read(m.Haemoglobin));
    }

    private static double Content(double saturation, double haemoglobin) => OxygenContent.FromPo2(haemoglobin, OxygenDissociation.Po2At(saturation, C), C, K);

    private static BloodFlow Flow(double flow, double saturation, double po2) => new(flow, 10, OxygenContent.MlPerDl(10, saturation, po2, K));

    private static Estimate Exact(double value) => Estimate.Normal(value, 0, Origin.Measured);

    private static Estimate Read(double value, double sd) => Estimate.Normal(value, sd, Origin.Measured);

    /// <summary>A saturation cannot be read above 100; at 99 with 0.4 that cuts less than one draw in a hundred.</summary>
    private static Estimate Unclipped(Drawn drawn, double truth, double sd) => Estimate.Normal(Math.Min(100, drawn.Normal(truth, sd)), sd, Origin.Measured);
}
