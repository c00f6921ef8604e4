using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Landmarks;

public class CavalAxisTests
{
    [Fact]
    public void Landmarks_follow_each_other_from_neck_to_groin_in_any_sample_of_any_body()
    {
        Gen.Select(Bodies.Any, Gen.ULong).Sample((habitus, seed) =>
        {
            AxisSamples samples = AxisSampler.Draw(PopulationModel.For(habitus), 20, seed);
            for (int i = 0; i < samples.Count; i++)
            {
                CavalAxis axis = CavalAxis.OfSample(samples, i);
                Assert.True(axis[CavalLandmark.RightNeckSkin] < axis[CavalLandmark.BrachiocephalicConfluence]);
                Assert.True(axis[CavalLandmark.BrachiocephalicConfluence] < axis[CavalLandmark.Scaj]);
                Assert.Equal(0, axis[CavalLandmark.Scaj]);
                Assert.True(axis[CavalLandmark.Scaj] < axis[CavalLandmark.TricuspidCentre]);
                Assert.True(axis[CavalLandmark.TricuspidCentre] < axis[CavalLandmark.Icaj]);
                Assert.True(axis[CavalLandmark.Icaj] < axis[CavalLandmark.HepaticVein]);
                Assert.True(axis[CavalLandmark.HepaticVein] < axis[CavalLandmark.RenalVein]);
                Assert.True(axis[CavalLandmark.RenalVein] < axis[CavalLandmark.IliacConfluence]);
                Assert.True(axis[CavalLandmark.IliacConfluence] < axis[CavalLandmark.RightGroinSkin]);
            }
        });
    }

    [Fact]
    public void A_tip_from_the_neck_and_one_from_the_groin_meet_at_the_same_place()
    {
        CavalAxis axis = CavalAxis.OfMedians(PopulationModel.For(Bodies.Adult));
        foreach (BodySide side in Enum.GetValues<BodySide>())
        {
            double wholeWay = axis.FromGroin(side, 0) - axis.FromNeck(side, 0);
            Assert.Equal(axis.FromNeck(side, 200), axis.FromGroin(side, wholeWay - 200), 1e-9);
        }
    }

    [Fact]
    public void The_left_ways_are_longer_by_their_extras()
    {
        AxisDistribution distribution = PopulationModel.For(Bodies.Adult);
        CavalAxis axis = CavalAxis.OfMedians(distribution);

        Assert.Equal(distribution.Median(AxisDimension.LeftNeckExtra), axis[CavalLandmark.RightNeckSkin] - axis[CavalLandmark.LeftNeckSkin], 1e-9);
        Assert.Equal(distribution.Median(AxisDimension.LeftGroinExtra), axis[CavalLandmark.LeftGroinSkin] - axis[CavalLandmark.RightGroinSkin], 1e-9);
    }

    [Fact]
    public void A_sample_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CavalAxis.OfSample(AxisSampler.Draw(PopulationModel.For(Bodies.Newborn), 5, 1), 5));
}
