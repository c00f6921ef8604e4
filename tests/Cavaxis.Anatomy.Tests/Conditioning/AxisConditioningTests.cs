using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Quantities;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Conditioning;

public class AxisConditioningTests
{
    private static readonly Gen<AxisMeasurement> AnySingle =
        from dimension in Gen.Enum<AxisDimension>()
        from quantile in Gen.Double[-3, 3]
        from relativeSd in Gen.Double[0.01, 0.4]
        select Single(dimension, quantile, relativeSd);

    private static readonly Gen<AxisMeasurement> AnySum =
        from length in Gen.Enum<DerivedLength>()
        from quantile in Gen.Double[-2.5, 2.5]
        from sd in Gen.Double[0.5, 30]
        select Sum(length, quantile, sd);

    private static AxisDistribution Prior { get; } = PopulationModel.For(Bodies.Adult, NeckEntry.MidNeck);

    [Fact]
    public void A_measurement_of_single_dimensions_never_widens_any_dimension()
    {
        Gen.Select(AnySingle.List[0, 4], AnySingle).Sample((before, more) =>
        {
            AxisDistribution wide = Prior.Given(before);
            AxisDistribution narrow = wide.Given(more);
            foreach (AxisDimension dimension in AxisDimensions.All)
            {
                Assert.True(narrow.LatentSd(dimension) <= wide.LatentSd(dimension) * (1 + 1e-9), dimension.ToString());
            }
        });
    }

    [Fact]
    public void Nothing_measured_is_ever_wider_than_the_population()
    {
        Gen.Select(AnySingle.List[0, 3], AnySum.List[1, 3]).Sample((singles, sums) =>
        {
            AxisDistribution narrow = Prior.Given(singles).Given(sums);
            foreach (AxisDimension dimension in AxisDimensions.All)
            {
                Assert.True(narrow.LatentSd(dimension) <= Prior.LatentSd(dimension) * (1 + 1e-9), dimension.ToString());
                if (AxisDimensions.ScaleOf(dimension) == LatentScale.Logarithmic)
                {
                    Assert.True(RelativeWidth(narrow, dimension) <= RelativeWidth(Prior, dimension) * (1 + 1e-9), dimension.ToString());
                }
            }
        });

        static double RelativeWidth(AxisDistribution distribution, AxisDimension dimension)
        {
            Estimate estimate = distribution.Interval(dimension);
            return (estimate.High - estimate.Low) / estimate.Value;
        }
    }

    [Fact]
    public void The_order_and_grouping_of_measurements_do_not_matter()
    {
        Gen.Select(AnySingle.List[1, 3], AnySum.List[1, 3]).Sample((singles, sums) =>
        {
            AxisDistribution forwards = Prior.Given([.. singles, .. sums]);
            AxisDistribution backwards = Prior;
            foreach (AxisMeasurement measurement in sums.Concat(singles).Reverse())
            {
                backwards = backwards.Given(measurement);
            }

            foreach (AxisDimension dimension in AxisDimensions.All)
            {
                Assert.Equal(forwards.LatentMean(dimension), backwards.LatentMean(dimension), 1e-9 * (1 + Math.Abs(forwards.LatentMean(dimension))));
                Assert.Equal(forwards.LatentSd(dimension), backwards.LatentSd(dimension), 1e-9 * forwards.LatentSd(dimension));
            }
        });
    }

    [Fact]
    public void The_covariance_stays_positive_definite()
    {
        Gen.Select(AnySingle.List[0, 8], AnySum.List[0, 4]).Sample((singles, sums) =>
            Assert.True(Algebra.SmallestPivot(Prior.Given([.. singles, .. sums])) > 0));
    }

    [Fact]
    public void A_sum_settles_at_the_most_probable_point()
    {
        // At the optimum of prior and likelihood the gradient vanishes: P⁻¹ (x − m) = Hᵀ (y − h)/r. Checked as x − m = P Hᵀ (y − h)/r.
        Gen.Select(Gen.Double[-2.5, 2.5], Gen.Double[1, 20]).Sample((quantile, sd) =>
        {
            AxisMeasurement measurement = Sum(DerivedLength.InferiorVenaCavaLength, quantile, sd);
            AxisDistribution posterior = Prior.Given(measurement);
            AxisDimension a = AxisDimension.IcajToRenalVein;
            AxisDimension b = AxisDimension.RenalVeinToIliacConfluence;
            double inferiorSd = 9.4 * Bodies.Adult.HeightScale;
            double r = (sd * sd) + (inferiorSd * inferiorSd);
            double residual = (measurement.Value - posterior.Median(a) - posterior.Median(b)) / r;
            foreach (AxisDimension dimension in AxisDimensions.All)
            {
                double gain = (Prior.LatentCovariance(dimension, a) * posterior.Median(a)) + (Prior.LatentCovariance(dimension, b) * posterior.Median(b));
                Assert.Equal(gain * residual, posterior.LatentMean(dimension) - Prior.LatentMean(dimension), 1e-7);
            }
        });
    }

    [Fact]
    public void A_precise_reading_is_believed_and_marked_as_measured()
    {
        AxisDistribution posterior = Prior.Given(AxisMeasurement.Of(
            AxisDimension.AtrialSpan, 75, 0.5, JunctionEdge.AppendageBorder, JunctionEdge.EustachianRim));

        Estimate span = posterior.Interval(AxisDimension.AtrialSpan);
        Assert.Equal(75, span.Value, 0.1);
        Assert.Equal(Origin.Measured, span.Origin);
        Assert.True(posterior.IsMeasured(AxisDimension.AtrialSpan));
        Assert.False(posterior.IsMeasured(AxisDimension.TricuspidDistance));
        Assert.True(posterior.Median(AxisDimension.TricuspidDistance) > Prior.Median(AxisDimension.TricuspidDistance));
    }

    [Fact]
    public void The_myocardial_edge_is_carried_to_the_eustachian_rim()
    {
        double scale = Bodies.Adult.HeightScale;
        AxisDistribution posterior = Prior.Given(AxisMeasurement.Of(
            AxisDimension.AtrialSpan, 60, 0.5, JunctionEdge.AppendageBorder, JunctionEdge.MyocardialEdge));
        // Precision-weighted mean of the prior and of 60 + 17.6 with the edge's own spread, on the logarithm.
        double value = 60 + (17.6 * scale);
        double error = Math.Sqrt((0.5 * 0.5) + (6.6 * scale * 6.6 * scale));
        double likelihood = Math.Log(1 + (error * error / (value * value)));
        double prior = Math.Pow(Prior.LatentSd(AxisDimension.AtrialSpan), 2);
        double expected = ((Prior.LatentMean(AxisDimension.AtrialSpan) / prior) + (Math.Log(value) / likelihood)) / ((1 / prior) + (1 / likelihood));

        Assert.Equal(Math.Exp(expected), posterior.Median(AxisDimension.AtrialSpan), 1e-9);
    }

    [Theory]
    [InlineData(JunctionEdge.CristaTerminalis, JunctionEdge.EustachianRim)]
    [InlineData(JunctionEdge.FirstAtrialSlice, JunctionEdge.EustachianRim)]
    [InlineData(JunctionEdge.Unknown, JunctionEdge.EustachianRim)]
    [InlineData(JunctionEdge.AppendageBorder, JunctionEdge.MyocardialEdge)]
    [InlineData(JunctionEdge.AppendageBorder, JunctionEdge.Unknown)]
    public void Any_edge_but_the_models_own_leaves_more_doubt(JunctionEdge superior, JunctionEdge inferior)
    {
        AxisDistribution own = Prior.Given(AxisMeasurement.Of(AxisDimension.AtrialSpan, 65, 2, JunctionEdge.AppendageBorder, JunctionEdge.EustachianRim));
        AxisDistribution other = Prior.Given(AxisMeasurement.Of(AxisDimension.AtrialSpan, 65, 2, superior, inferior));

        Assert.True(other.LatentSd(AxisDimension.AtrialSpan) > own.LatentSd(AxisDimension.AtrialSpan));
    }

    [Fact]
    public void An_edge_inside_the_way_cancels()
    {
        AxisDistribution high = Prior.Given(AxisMeasurement.Of(DerivedLength.RightNeckSkinToIcaj, 240, 3, JunctionEdge.CristaTerminalis, JunctionEdge.EustachianRim));
        AxisDistribution low = Prior.Given(AxisMeasurement.Of(DerivedLength.RightNeckSkinToIcaj, 240, 3, JunctionEdge.FirstAtrialSlice, JunctionEdge.EustachianRim));

        Assert.All(AxisDimensions.All, dimension => Assert.Equal(high.LatentMean(dimension), low.LatentMean(dimension), 1e-12));
    }

    [Fact]
    public void A_dimension_that_touches_no_junction_ignores_the_edges()
    {
        AxisDistribution named = Prior.Given(AxisMeasurement.Of(AxisDimension.RightFemoralVeinDiameter, 11, 0.7, JunctionEdge.CristaTerminalis, JunctionEdge.MyocardialEdge));
        AxisDistribution unnamed = Prior.Given(AxisMeasurement.Of(AxisDimension.RightFemoralVeinDiameter, 11, 0.7));

        Assert.All(AxisDimensions.All, dimension => Assert.Equal(named.LatentMean(dimension), unnamed.LatentMean(dimension)));
    }

    [Fact]
    public void A_reading_far_outside_is_used_and_reported()
    {
        AxisMeasurement reading = AxisMeasurement.Of(AxisDimension.AtrialSpan, 180, 2, JunctionEdge.AppendageBorder, JunctionEdge.EustachianRim);
        AxisDistribution posterior = Prior.Given(reading);

        AxisSurprise surprise = Assert.Single(posterior.Surprises);
        Assert.Same(reading, surprise.Measurement);
        Assert.True(surprise.StandardScore > AxisSurprise.Threshold);
        Assert.Equal(Prior.Median(AxisDimension.AtrialSpan), surprise.Expected.Value, 1e-9);
        Assert.Equal(180, posterior.Median(AxisDimension.AtrialSpan), 2.0);
        Assert.Contains("AtrialSpan", surprise.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_ordinary_reading_is_no_surprise()
    {
        AnySingle.Sample(measurement =>
        {
            AxisDistribution posterior = Prior.Given(AxisMeasurement.Of(
                measurement.Terms[0].Dimension, measurement.Value, measurement.Sd, JunctionEdge.AppendageBorder, JunctionEdge.EustachianRim));
            Assert.Empty(posterior.Surprises);
        });
    }

    [Fact]
    public void A_reading_that_its_edge_turns_negative_is_still_used()
    {
        AxisDistribution posterior = Prior.Given(AxisMeasurement.Of(
            AxisDimension.IcajToHepaticVein, 10, 3, inferiorEdge: JunctionEdge.MyocardialEdge));

        Assert.InRange(posterior.Median(AxisDimension.IcajToHepaticVein), 0.1, Prior.Median(AxisDimension.IcajToHepaticVein));
    }

    [Fact]
    public void No_measurement_leaves_the_belief_as_it_is() => Assert.Same(Prior, Prior.Given([]));

    [Fact]
    public void The_interval_of_a_sum_agrees_with_its_parts()
    {
        Estimate length = Prior.Interval(DerivedLength.LeftNeckSkinToScaj);

        Assert.Equal(Prior.Median(AxisDimension.RightNeckSkinToScaj) + Prior.Median(AxisDimension.LeftNeckExtra), length.Value, 1e-9);
        Assert.True(length.Sd > Prior.LatentSd(AxisDimension.LeftNeckExtra));
    }

    private static AxisMeasurement Single(AxisDimension dimension, double quantile, double relativeSd)
    {
        bool logarithmic = AxisDimensions.ScaleOf(dimension) == LatentScale.Logarithmic;
        double latent = Prior.LatentMean(dimension) + (quantile * Prior.LatentSd(dimension));
        double value = logarithmic ? Math.Exp(latent) : latent;
        return AxisMeasurement.Of(dimension, value, relativeSd * (logarithmic ? value : Prior.LatentSd(dimension)));
    }

    private static AxisMeasurement Sum(DerivedLength length, double quantile, double sd)
    {
        Estimate expected = Prior.Interval(length);
        return AxisMeasurement.Of(length, expected.Value + (quantile * expected.Sd), sd);
    }
}
