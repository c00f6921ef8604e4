using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Quantities;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Population;

public class PopulationModelTests
{
    [Fact]
    public void Every_dimension_has_one_row_with_a_citation()
    {
        Assert.Equal(AxisDimensions.All, PopulationTable.Rows.Select(row => row.Dimension));
        Assert.All(PopulationTable.Rows, row =>
        {
            Assert.NotEmpty(row.Source.Citation);
            Assert.NotEmpty(row.GrowthSource.Citation);
            Assert.True(row.Spread > 0);
            Assert.Equal(AxisDimensions.ScaleOf(row.Dimension), row.Scale);
        });
    }

    [Fact]
    public void The_shared_causes_leave_every_dimension_a_rest_of_its_own()
    {
        foreach (
            IGrouping<AxisDimension,
            FactorLoading> loadings in CorrelationModel.Loadings.GroupBy(entry => entry.Dimension))
        {
            Assert.True(loadings.Sum(entry => entry.Loading * entry.Loading) < 0.95, $"{loadings.Key} has no rest.");
            Assert.Equal(loadings.Count(), loadings.Select(entry => entry.Factor).Distinct().Count());
        }
    }

    [Fact]
    public void The_covariance_is_positive_definite_for_any_body()
    {
        Bodies.Any.Sample(habitus =>
        {
            AxisDistribution distribution = PopulationModel.For(habitus);
            // Gaussian elimination written apart from the engine's Cholesky: every pivot must stay positive.
            Assert.True(Algebra.SmallestPivot(distribution) > 0);
        });
    }

    [Fact]
    public void Positive_dimensions_stay_positive_and_finite_for_any_body()
    {
        Bodies.Any.Sample(habitus =>
        {
            AxisDistribution distribution = PopulationModel.For(habitus);
            foreach (AxisDimension dimension in AxisDimensions.All)
            {
                Estimate estimate = distribution.Interval(dimension);
                Assert.True(double.IsFinite(estimate.Value) && estimate.Sd > 0);
                Assert.True(AxisDimensions.ScaleOf(dimension) == LatentScale.Plain || estimate.Low > 0);
                Assert.Equal(Origin.Estimated, estimate.Origin);
            }
        });
    }

    [Fact]
    public void A_taller_body_of_the_same_build_never_has_a_shorter_way()
    {
        Gen.Select(Gen.Double[18, 90], Gen.Double[140, 195], Gen.Double[18, 35]).Sample((age, height, index) =>
        {
            AxisDistribution shorter = PopulationModel.For(
                new BodyHabitus(age, Sex.Male, height, index * height * height * 1e-4));
            AxisDistribution taller = PopulationModel.For(
                new BodyHabitus(age, Sex.Male, height + 5, index * (height + 5) * (height + 5) * 1e-4));
            foreach (
                AxisDimension dimension in AxisDimensions.All.Where(
                    one => AxisDimensions.ScaleOf(one) == LatentScale.Logarithmic))
            {
                Assert.True(taller.Median(dimension) >= shorter.Median(dimension), dimension.ToString());
            }
        });
    }

    [Fact]
    public void Both_sides_of_a_pair_are_more_alike_than_a_pair_of_strangers()
    {
        AxisDistribution distribution = PopulationModel.For(Bodies.Adult);
        (AxisDimension Right, AxisDimension Left)[] pairs =
        [
            (AxisDimension.RightJugularVeinDiameter, AxisDimension.LeftJugularVeinDiameter),
            (AxisDimension.RightFemoralVeinDiameter, AxisDimension.LeftFemoralVeinDiameter),
            (AxisDimension.RightFemoralArteryDiameter, AxisDimension.LeftFemoralArteryDiameter),
            (AxisDimension.RightAxillaryArteryDiameter, AxisDimension.LeftAxillaryArteryDiameter),
        ];
        foreach ((AxisDimension right, AxisDimension left) in pairs)
        {
            double own = distribution.Correlation(right, left);
            Assert.All(
                AxisDimensions.All.Where(other => other != right && other != left),
                other => Assert.True(own > distribution.Correlation(right, other), $"{right} and {other}"));
        }
    }

    [Theory]
    [InlineData(175, 80)]
    [InlineData(50, 3)]
    public void An_unknown_entry_on_the_neck_is_the_even_mixture_of_the_two_heights(double height, double weight)
    {
        BodyHabitus habitus = new(30, Sex.Male, height, weight);
        (double mid, double midSd) = NeckDepthLaw.DepthMm(habitus, NeckEntry.MidNeck);
        (double low, double lowSd) = NeckDepthLaw.DepthMm(habitus, NeckEntry.LowNeck);
        (double unknown, double unknownSd) = NeckDepthLaw.DepthMm(habitus, NeckEntry.Unknown);

        // Moments of a mixture from raw second moments, not from the form used in the engine.
        double mean = (mid + low) / 2;
        double second = ((midSd * midSd) + (mid * mid) + (lowSd * lowSd) + (low * low)) / 2;
        Assert.Equal(mean, unknown, 1e-9);
        Assert.Equal(Math.Sqrt(second - (mean * mean)), unknownSd, 1e-9);
        Assert.True(unknownSd > midSd);
    }

    [Fact]
    public void A_low_entry_is_25_mm_nearer_in_the_reference_adult()
    {
        BodyHabitus habitus = new(40, Sex.Female, 170, 65);

        double mid = PopulationModel.For(habitus, NeckEntry.MidNeck).Median(AxisDimension.RightNeckSkinToScaj);
        double low = PopulationModel.For(habitus, NeckEntry.LowNeck).Median(AxisDimension.RightNeckSkinToScaj);

        Assert.Equal(25, mid - low, 1e-9);
    }

    [Fact]
    public void Men_have_the_wider_femoral_artery_only_once_grown()
    {
        Assert.True(Artery(40, Sex.Male) > Artery(40, Sex.Female) * 1.1);
        Assert.Equal(Artery(10, Sex.Male), Artery(10, Sex.Female), 1e-12);

        static double Artery(double age, Sex sex) =>
            PopulationModel.For(new BodyHabitus(age, sex, 140, 35)).Median(AxisDimension.RightFemoralArteryDiameter);
    }

    [Fact]
    public void A_body_that_is_missing_is_refused() => Assert.Throws<ArgumentNullException>(() => PopulationModel.For(null!));
}
