using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Tests.Fit;

public class AxisLandmarksTests
{
    /// <summary>The columns for all anatomies and the axis of one anatomy are computed apart; they must tell the same places.</summary>
    [Fact]
    public void The_columns_agree_with_the_axis_of_each_single_anatomy()
    {
        AxisSamples samples = AxisSampler.Draw(PopulationModel.For(new BodyHabitus(50, Sex.Female, 163, 61)), 300, 11);
        AxisLandmarks columns = new(samples);
        (Landmark Column, CavalLandmark Single)[] pairs =
        [
            (Landmark.BrachiocephalicConfluence, CavalLandmark.BrachiocephalicConfluence), (Landmark.Scaj, CavalLandmark.Scaj),
            (Landmark.Icaj, CavalLandmark.Icaj), (Landmark.HepaticVein, CavalLandmark.HepaticVein),
            (Landmark.RenalVein, CavalLandmark.RenalVein), (Landmark.IliacConfluence, CavalLandmark.IliacConfluence),
        ];
        for (int i = 0; i < samples.Count; i++)
        {
            CavalAxis single = CavalAxis.OfSample(samples, i);
            foreach ((Landmark column, CavalLandmark landmark) in pairs)
            {
                Assert.Equal(single[landmark], columns.Of(column)[i], 9);
            }

            // The columns take the fraction of the arc, the single axis the arc up to the fraction of the chord.
            Assert.Equal(single[CavalLandmark.TricuspidCentre], columns.Of(Landmark.TricuspidCentre)[i], 1.0);
            foreach (BodySide side in Enum.GetValues<BodySide>())
            {
                Assert.Equal(single.FromNeck(side, 100), columns.Skin(new VenousEntry(AccessRoute.Jugular, side))[i] + 100, 9);
                Assert.Equal(single.FromGroin(side, 100), columns.Skin(new VenousEntry(AccessRoute.FemoralVein, side))[i] - 100, 9);
            }
        }
    }
}
