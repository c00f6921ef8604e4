using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Sampling;

public class AxisSamplerTests
{
    private static AxisDistribution Prior { get; } = PopulationModel.For(Bodies.Adult, NeckEntry.MidNeck);

    [Fact]
    public void The_same_seed_gives_the_same_anatomies_and_another_seed_others()
    {
        AxisSamples first = AxisSampler.Draw(Prior, 500, 7);
        AxisSamples again = AxisSampler.Draw(Prior, 500, 7);
        AxisSamples other = AxisSampler.Draw(Prior, 500, 8);

        foreach (AxisDimension dimension in AxisDimensions.All)
        {
            Assert.True(first[dimension].SequenceEqual(again[dimension]));
            Assert.False(first[dimension].SequenceEqual(other[dimension]));
        }
    }

    [Fact]
    public void A_sample_does_not_depend_on_how_many_are_drawn_or_from_where_the_run_is_cut()
    {
        AxisSamples whole = AxisSampler.Draw(Prior, 1000, 11);
        Gen.Select(Gen.Int[0, 900], Gen.Int[1, 100]).Sample((first, count) =>
        {
            AxisSamples part = new(count);
            AxisSampler.Fill(Prior, part, 11, (uint)first);
            foreach (AxisDimension dimension in AxisDimensions.All)
            {
                Assert.True(part[dimension].SequenceEqual(whole[dimension].Slice(first, count)));
            }
        });
    }

    [Fact]
    public void Means_spreads_and_correlations_of_many_samples_agree_with_the_belief()
    {
        const int Count = 200_000;
        AxisSamples samples = AxisSampler.Draw(Prior, Count, 2024);
        double[][] latent = [.. AxisDimensions.All.Select(dimension => Standardised(samples, dimension))];
        double fiveErrors = 5 / Math.Sqrt(Count);
        // Redrawn anatomies truncate the belief a little; their share bounds what they can move.
        double redrawn = 10.0 * samples.Redrawn / Count;
        for (int i = 0; i < latent.Length; i++)
        {
            Assert.Equal(0, latent[i].Average(), fiveErrors + redrawn);
            for (int j = 0; j <= i; j++)
            {
                double product = 0;
                for (int s = 0; s < Count; s++)
                {
                    product += latent[i][s] * latent[j][s];
                }

                double expected = Prior.Correlation((AxisDimension)i, (AxisDimension)j);
                Assert.Equal(expected, product / Count, (1.5 * fiveErrors) + redrawn);
            }
        }
    }

    [Fact]
    public void The_tails_are_those_of_a_normal_law()
    {
        // A dimension that no rule of plausibility touches; shares beyond 1, 2 and 3 SD from the normal law.
        const int Count = 200_000;
        double[] latent = Standardised(AxisSampler.Draw(Prior, Count, 5), AxisDimension.RightCarotidArteryDiameter);
        foreach ((double bound, double share) in new[] { (1.0, 0.317310508), (2.0, 0.045500264), (3.0, 0.002699796) })
        {
            double found = latent.Count(value => Math.Abs(value) > bound) / (double)Count;
            Assert.Equal(share, found, 5 * Math.Sqrt(share / Count));
        }
    }

    [Fact]
    public void No_impossible_anatomy_is_ever_returned()
    {
        Gen.Select(Bodies.Any, Gen.ULong, Gen.Enum<NeckEntry>()).Sample(
            (habitus, seed, entry) => AssertPossible(AxisSampler.Draw(PopulationModel.For(habitus, entry), 300, seed)),
            iter: 50);
    }

    [Fact]
    public void Measurements_that_contradict_each_other_are_mended_into_an_order()
    {
        AxisDistribution forced = Prior.Given(
        [
            AxisMeasurement.Of(AxisDimension.IcajToHepaticVein, 140, 0.1, inferiorEdge: JunctionEdge.EustachianRim),
            AxisMeasurement.Of(AxisDimension.IcajToRenalVein, 100, 0.1, inferiorEdge: JunctionEdge.EustachianRim),
        ]);

        AxisSamples samples = AxisSampler.Draw(forced, 200, 3);

        Assert.Equal(200, samples.Mended);
        Assert.Equal(200, samples.Redrawn);
        AssertPossible(samples);
    }

    [Fact]
    public void An_ordinary_adult_is_hardly_ever_drawn_again()
    {
        AxisSamples samples = AxisSampler.Draw(Prior, 10_000, 1);

        Assert.InRange(samples.Redrawn, 0, 200);
        Assert.Equal(0, samples.Mended);
    }

    [Fact]
    public void A_buffer_is_filled_again_without_allocating()
    {
        AxisSamples samples = AxisSampler.Draw(Prior, 256, 1);
        AxisSampler.Fill(Prior, samples, 2);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (ulong seed = 0; seed < 20; seed++)
        {
            AxisSampler.Fill(Prior, samples, seed);
        }

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20 * 256);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Fewer_than_one_anatomy_cannot_be_drawn(int count) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AxisSampler.Draw(Prior, count, 1));

    private static double[] Standardised(AxisSamples samples, AxisDimension dimension)
    {
        double mean = Prior.LatentMean(dimension);
        double sd = Prior.LatentSd(dimension);
        bool logarithmic = AxisDimensions.ScaleOf(dimension) == LatentScale.Logarithmic;
        double[] result = new double[samples.Count];
        for (int i = 0; i < result.Length; i++)
        {
            double value = samples[dimension][i];
            result[i] = ((logarithmic ? Math.Log(value) : value) - mean) / sd;
        }

        return result;
    }

    private static void AssertPossible(AxisSamples samples)
    {
        for (int i = 0; i < samples.Count; i++)
        {
            Assert.True(samples[AxisDimension.AtrialSpan][i] > 0);
            Assert.True(samples[AxisDimension.IcajToHepaticVein][i] < samples[AxisDimension.IcajToRenalVein][i]);
            Assert.True(
                samples[AxisDimension.IcajToRenalVein][i] + samples[AxisDimension.RenalVeinToIliacConfluence][i] < samples[AxisDimension.RightGroinSkinToIcaj][i]);
            Assert.True(samples[AxisDimension.SvcLength][i] < samples[AxisDimension.RightNeckSkinToScaj][i]);
            Assert.True(samples[AxisDimension.RightNeckSkinToScaj][i] + samples[AxisDimension.LeftNeckExtra][i] > 0);
            Assert.InRange(samples[AxisDimension.TricuspidFraction][i], 0, 1);
            Assert.True(Math.Abs(samples[AxisDimension.MouthOffset][i]) < samples[AxisDimension.AtrialSpan][i]);
        }
    }
}
