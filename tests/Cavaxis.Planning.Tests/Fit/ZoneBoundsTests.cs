using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Tests.Fit;

public class ZoneBoundsTests
{
    private static readonly ZoneRule Scaled = RuleBookReader.BuiltIn.Zones.First(zone => zone.Id == "dual-tip");

    [Theory]
    [InlineData(85, 0.5)]
    [InlineData(170, 1)]
    [InlineData(200, 1)]
    public void Offsets_shrink_with_a_small_body_and_do_not_grow_with_a_large_one(double heightCm, double scale)
    {
        AxisLandmarks landmarks = new(Cases.Anatomies(heightCm, 20));
        ZoneBounds zones = new([Scaled], landmarks, heightCm);
        for (int i = 0; i < landmarks.Count; i++)
        {
            Assert.Equal(landmarks.Of(Scaled.FromLandmark)[i] + (scale * Scaled.FromOffsetMm), zones.From(Scaled)[i], 9);
            Assert.Equal(landmarks.Of(Scaled.ToLandmark)[i] + (scale * Scaled.ToOffsetMm), zones.To(Scaled)[i], 9);
        }
    }

    [Fact]
    public void Offsets_that_do_not_scale_stay_as_they_are()
    {
        ZoneRule fixedRule = Scaled with { ScalesWithHeight = false };
        AxisLandmarks landmarks = new(Cases.Anatomies(100, 20));
        ZoneBounds zones = new([fixedRule], landmarks, 100);
        Assert.Equal(landmarks.Of(Landmark.Icaj)[3] + 30, zones.From(fixedRule)[3], 9);
    }

    [Fact]
    public void Landmarks_follow_one_another_from_head_to_foot_in_every_anatomy()
    {
        AxisLandmarks landmarks = new(Cases.Anatomies(175, 1000));
        for (int i = 0; i < landmarks.Count; i++)
        {
            Assert.True(landmarks.Of(Landmark.BrachiocephalicConfluence)[i] < 0);
            Assert.Equal(0, landmarks.Of(Landmark.Scaj)[i]);
            Assert.True(landmarks.Of(Landmark.TricuspidCentre)[i] < landmarks.Of(Landmark.Icaj)[i]);
            Assert.True(landmarks.Of(Landmark.Icaj)[i] < landmarks.Of(Landmark.HepaticVein)[i]);
            Assert.True(landmarks.Of(Landmark.RenalVein)[i] < landmarks.Of(Landmark.IliacConfluence)[i]);
        }
    }
}
