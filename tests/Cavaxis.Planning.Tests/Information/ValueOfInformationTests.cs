using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Information;
using Cavaxis.Planning.Rules;
using CsCheck;

namespace Cavaxis.Planning.Tests.Information;

/// <summary>The value of a measurement against the closed Gaussian form and against conditioning anatomy by anatomy.</summary>
public class ValueOfInformationTests
{
    private const int Count = 20_000;

    [Theory]
    [InlineData(10, 4, 0)]
    [InlineData(10, 4, 6)]
    [InlineData(5, 10, 0)]
    [InlineData(8, 1, 20)]
    public void A_linear_Gaussian_outcome_loses_the_squared_correlation_with_the_reading(double sd, double error, double other)
    {
        // f = x + other; reading = x + error. Var(f | reading) = sd² error²/(sd² + error²) + other².
        (double[] x, double[] noise, double[] rest) = Normals();
        double[] readings = [.. x.Select((z, i) => (sd * z) + (error * noise[i]))];
        double[] outcomes = [.. x.Select((z, i) => (sd * z) + (other * rest[i]))];
        double squaredCorrelation = sd * sd * sd * sd / (((sd * sd) + (error * error)) * ((sd * sd) + (other * other)));
        (double now, double after) = ValueOfInformation.ExpectedVariance(readings, outcomes);
        Assert.Equal((sd * sd) + (other * other), now, 0.03 * now);
        Assert.Equal(squaredCorrelation, 1 - (after / now), 0.015);
    }

    [Fact]
    public void A_reading_that_has_nothing_to_do_with_the_outcome_is_worth_nothing()
    {
        (double[] x, double[] noise, _) = Normals();
        (double now, double after) = ValueOfInformation.ExpectedVariance(x, noise);
        Assert.InRange(1 - (after / now), 0, 0.005);
    }

    [Fact]
    public void A_yes_or_no_outcome_agrees_with_conditioning_the_belief_on_each_possible_reading()
    {
        // Brute force: draw a true anatomy, draw a reading of its span, condition the belief on it, and count p (1 − p) in
        // fresh anatomies of that belief. Its mean over the readings is the expected variance afterwards.
        BodyHabitus body = new(45, Sex.Male, 165, 68);
        AxisDistribution prior = PopulationModel.For(body, NeckEntry.LowNeck)
            .Given(AxisMeasurement.Of(AxisDimension.RightNeckSkinToScaj, 155, 4, JunctionEdge.AppendageBorder));
        const double Error = 4;
        AxisSamples samples = AxisSampler.Draw(prior, Count, 11);
        double[] fits = Fits(samples, body.HeightCm);
        double[] errors = [.. Normals().Noise.Select(z => Error * z)];
        double[] readings = [.. errors.Select((e, i) => samples[AxisDimension.AtrialSpan][i] + e)];
        double[] chosen = [.. readings.Take(60)];
        (double now, double after) = ValueOfInformation.ExpectedVariance(readings, fits);

        double sum = 0;
        for (int i = 0; i < chosen.Length; i++)
        {
            AxisDistribution posterior = prior.Given(AxisMeasurement.Of(
                AxisDimension.AtrialSpan, Math.Max(15, chosen[i]), Error, JunctionEdge.AppendageBorder, JunctionEdge.EustachianRim));
            double p = Fits(AxisSampler.Draw(posterior, 1000, 100 + (ulong)i), body.HeightCm).Average();
            sum += p * (1 - p);
        }

        double brute = sum / chosen.Length;
        Assert.InRange(now, 0.05, 0.25);
        Assert.True(after < 0.97 * now, $"{after} of {now}");
        Assert.Equal(brute, after, 0.03);
    }

    [Fact]
    public void The_expected_variance_is_never_above_the_variance_now() => Gen.Select(
        Gen.Double[-10, 10].Array[100, 400], Gen.Bool).Sample((values, binary) =>
        {
            double[] outcomes = [.. values.Select((v, i) => binary ? (v + (i % 7) > 0 ? 1.0 : 0.0) : v * (i % 5))];
            (double now, double after) = ValueOfInformation.ExpectedVariance((double[])values.Clone(), outcomes);
            return after >= 0 && after <= now;
        });

    [Fact]
    public void A_surer_measurement_is_never_worth_less_beyond_the_noise_of_sampling()
    {
        (double[] x, double[] noise, double[] rest) = Normals();
        double before = 1;
        foreach (double error in new[] { 0, 0.25, 0.5, 1, 2, 4 })
        {
            double[] readings = [.. x.Select((z, i) => z + (error * noise[i]))];
            double[] outcomes = [.. x.Select((z, i) => z + (0.3 * rest[i]) > 0.4 ? 1.0 : 0.0)];
            (double now, double after) = ValueOfInformation.ExpectedVariance(readings, outcomes);
            double narrowing = 1 - (after / now);
            Assert.InRange(narrowing, 0, before + 0.01);
            before = narrowing;
        }
    }

    [Fact]
    public void An_outcome_that_cannot_vary_has_nothing_to_lose()
    {
        (double[] x, _, _) = Normals();
        (double now, double after) = ValueOfInformation.ExpectedVariance(x, new double[Count]);
        Assert.Equal(0, now);
        Assert.Equal(0, after);
    }

    [Fact]
    public void Too_few_anatomies_or_unequal_lengths_are_refused()
    {
        Assert.Throws<ArgumentException>(() => ValueOfInformation.ExpectedVariance(new double[99], new double[99]));
        Assert.Throws<ArgumentException>(() => ValueOfInformation.ExpectedVariance(new double[200], new double[201]));
        Assert.Throws<ArgumentNullException>(() => ValueOfInformation.ExpectedVariance(null!, new double[201]));
    }

    [Fact]
    public void Every_usual_measurement_has_an_error_and_a_way_and_stands_once()
    {
        Assert.Equal(UsualMeasurement.All.Count, UsualMeasurement.All.Select(usual => usual.Dimension).Distinct().Count());
        Assert.All(UsualMeasurement.All, usual =>
        {
            Assert.True(usual.Sd > 0);
            Assert.NotEmpty(usual.How);
            Assert.Same(usual, UsualMeasurement.Of(usual.Dimension));
        });
    }

    private static double[] Fits(AxisSamples samples, double heightCm)
    {
        AxisLandmarks landmarks = new(samples);
        ZoneRule[] rules = [.. RuleBookReader.BuiltIn.Zones.Where(r => r.Role == CannulaRole.DualLumen)];
        DepthWindows windows = DepthWindows.Of(
            DeviceCatalogue.BuiltIn.Cannula("bicaval-31fr-31cm"), new VenousEntry(AccessRoute.Jugular, BodySide.Right), rules,
            new ZoneBounds(rules, landmarks, heightCm), landmarks, 30)!;
        return [.. Enumerable.Range(0, samples.Count).Select(i => windows.Low[i] <= windows.High[i] ? 1.0 : 0.0)];
    }

    private static (double[] X, double[] Noise, double[] Other) Normals()
    {
        Random random = new(5);
        return (Draw(), Draw(), Draw());

        double[] Draw() => [.. Enumerable.Range(0, Count).Select(_ =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()))];
    }
}
