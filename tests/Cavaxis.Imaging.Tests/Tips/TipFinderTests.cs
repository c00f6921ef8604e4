using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Tips;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Imaging.Tests.Tips;

public sealed class TipFinderTests
{
    private static readonly AxisDistribution Man = PopulationModel.For(new BodyHabitus(45, Sex.Male, 175, 80), NeckEntry.MidNeck);
    private static readonly Cannula DualLumen = DeviceCatalogue.BuiltIn.Cannulae.Single(static c => c.Id == "bicaval-27fr-29cm");

    [Fact]
    public void An_exact_device_on_a_straight_axis_is_plain_arithmetic()
    {
        // Return port 94 mm above the tip, seen 20 mm below the SCAJ of a straight axis of span 65: tip at 114, that is 49 below the ICAJ.
        TipPlacement tip = Exact(Straight(65), Port(20));
        Assert.Equal(114, tip.FromSeenLandmark.BelowMm.Value, 1e-6);
        Assert.Equal(0, tip.FromSeenLandmark.BelowMm.Sd, 1e-9);
        Assert.Equal(49, Below(tip, CavalLandmark.Icaj), 1e-6);
        Assert.Equal(20, tip.FeatureBelowSeenLandmarkMm.Value, 1e-6);
    }

    [Fact]
    public void From_the_groin_the_tip_lies_on_the_side_of_the_head()
    {
        Cannula drainage = DeviceCatalogue.BuiltIn.Cannulae.Single(static c => c.Id == "drain-multi-25fr-55cm");
        SeenDistance seen = new(CavalLandmark.HepaticVein, false, Estimate.Normal(30, 0, Origin.Measured), DistanceWay.AlongVein, PlaneTilt.InPlane);
        TipPlacement tip = Exact(Straight(65), new TipQuestion(SeenFeature.Holes(drainage, "stage 2"), seen, SkinSite.RightGroin, DeviceCourse.AlongAxis));
        Assert.Equal(-95, tip.FromSeenLandmark.BelowMm.Value, 1e-9);
    }

    [Fact]
    public void A_wire_that_reaches_beyond_the_tip_is_taken_back()
    {
        SeenDistance seen = new(CavalLandmark.Icaj, true, Estimate.Normal(80, 0, Origin.Measured), DistanceWay.Straight, PlaneTilt.InPlane, JunctionEdge.EustachianRim);
        TipPlacement tip = Exact(Straight(65), new TipQuestion(SeenFeature.WireEnd(50, 0), seen, SkinSite.RightNeck, DeviceCourse.AlongAxis));
        Assert.Equal(30, tip.FromSeenLandmark.BelowMm.Value, 1e-6);
    }

    [Fact]
    public void A_leaning_line_is_longer_than_its_picture_by_one_over_the_cosine()
    {
        SeenDistance seen = new(CavalLandmark.Icaj, true, Estimate.Normal(40, 0, Origin.Measured), DistanceWay.Straight, new PlaneTilt(30, 0), JunctionEdge.EustachianRim);
        TipPlacement tip = Exact(Straight(65), new TipQuestion(SeenFeature.Tip, seen, SkinSite.RightNeck));
        Assert.Equal(40 / Math.Cos(Math.PI / 6), tip.FromSeenLandmark.BelowMm.Value, 1e-6);
        Assert.Equal(40, tip.InPlaneMm.Value, 1e-6);
    }

    [Fact]
    public void The_picture_is_a_lower_bound_whatever_the_tilt() =>
        Gen.Select(Gen.Double[5, 120], Gen.Double[0, 40], Gen.Double[0, 30], Gen.ULong).Sample(static (mm, middle, spread, seed) =>
        {
            SeenDistance seen = new(CavalLandmark.Icaj, true, Estimate.Normal(mm, 0, Origin.Measured), DistanceWay.AlongVein, new PlaneTilt(middle, spread), JunctionEdge.EustachianRim);
            TipPlacement tip = TipFinder.Find(new TipQuestion(SeenFeature.Tip, seen, SkinSite.RightNeck), [.. Enumerable.Repeat(Straight(65), 200)], seed);
            Assert.True(tip.FromSeenLandmark.BelowMm.Low >= mm - 1e-9);
            Assert.True(tip.FromSeenLandmark.BelowMm.High <= (2 * mm) + 1e-9);
        }, iter: 40);

    [Fact]
    public void Straight_through_the_atrium_the_tip_reaches_farther_than_along_the_axis_and_along_the_wall_less_far()
    {
        CavalAxis bent = new CavalLumen(Shape(65).With(AxisDimension.CavalBendFrontal, 25).With(AxisDimension.CavalBendSagittal, 20)).Axis;
        double excess = bent.Atrium.TotalLengthMm - 65;
        TipPlacement tip = Exact(bent, new TipQuestion(SeenFeature.Holes(DualLumen, "superior holes", HolePart.NearestHub), At(CavalLandmark.Scaj, 30, false), SkinSite.RightNeck, DeviceCourse.AlongAxis));

        // The whole atrium lies between the hole and the tip: straight, the device is ahead by the excess; along the wall it lags by 8/3 × 0.23² of the chord less the excess.
        Assert.Equal(excess, tip.StraightMm.Value - tip.AlongAxisMm.Value, 1e-6);
        Assert.Equal((65 * 8.0 / 3 * 0.23 * 0.23) - excess, tip.AlongAxisMm.Value - tip.AlongWallMm.Value, 1e-6);
        Assert.InRange(excess, 0.5, 6);
    }

    [Fact]
    public void An_unknown_course_lies_between_straight_and_wall()
    {
        CavalAxis[] axes = [.. Enumerable.Repeat(Straight(65), 2000)];
        TipPlacement tip = TipFinder.Find(Port(20) with { Course = DeviceCourse.Unknown }, axes, 5);
        Assert.InRange(tip.FromSeenLandmark.BelowMm.High, tip.AlongWallMm.Value, tip.StraightMm.Value);
        Assert.True(tip.FromSeenLandmark.BelowMm.Low >= tip.AlongWallMm.Value - 1e-9);
        Assert.True(tip.FromSeenLandmark.BelowMm.Sd > 0.5);
    }

    [Fact]
    public void A_straight_line_through_a_bent_atrium_is_laid_along_the_axis()
    {
        // From mouth to mouth in a straight line is the span; along the axis it is the whole way.
        CavalAxis bent = new CavalLumen(Shape(65).With(AxisDimension.CavalBendFrontal, 30)).Axis;
        TipPlacement tip = Exact(bent, new TipQuestion(SeenFeature.Tip, At(CavalLandmark.Scaj, 65, true), SkinSite.RightNeck));
        Assert.Equal(bent.Atrium.TotalLengthMm, tip.FeatureBelowSeenLandmarkMm.Value, 1e-6);
        Assert.Equal(0, Below(tip, CavalLandmark.Icaj), 1e-6);
    }

    [Fact]
    public void Over_sampled_anatomies_shares_add_to_one_and_a_surer_measurement_gives_a_narrower_answer()
    {
        AxisSamples samples = AxisSampler.Draw(Man, 2000, 9);
        TipPlacement unsure = TipFinder.Find(Question(8), samples, 9);
        TipPlacement sure = TipFinder.Find(Question(2), samples, 9);
        Assert.Equal(1, sure.Zones.Sum(static z => z.Share.Value), 1e-12);
        Assert.True(sure.FromSeenLandmark.BelowMm.Sd < unsure.FromSeenLandmark.BelowMm.Sd);

        // Against the other end of the atrium the span of the patient is not known: that spread is added.
        LandmarkDistance other = sure.FromLandmarks.Single(static d => d.Landmark == CavalLandmark.Icaj);
        Assert.True(other.BelowMm.Sd > sure.FromSeenLandmark.BelowMm.Sd);
        Assert.Equal(sure, sure);
        Assert.Equal(sure.FromSeenLandmark.BelowMm, TipFinder.Find(Question(2), samples, 9).FromSeenLandmark.BelowMm);

        static TipQuestion Question(double sd) => new(
            SeenFeature.ReturnPort(DualLumen),
            new SeenDistance(CavalLandmark.Scaj, true, Estimate.Normal(25, sd, Origin.Measured), DistanceWay.Straight, new PlaneTilt(0, 8), JunctionEdge.CristaTerminalis),
            SkinSite.RightNeck);
    }

    [Fact]
    public void A_depth_at_the_skin_that_does_not_agree_is_told_and_one_that_does_is_not()
    {
        CavalAxis axis = Straight(65);
        double tipAt = 114;
        double agrees = tipAt - axis[CavalLandmark.RightNeckSkin];
        TipPlacement good = Exact(axis, Port(20) with { SkinDepthMm = Estimate.Normal(agrees, 3, Origin.Measured) });
        TipPlacement bad = TipFinder.Find(Port(20) with { SkinDepthMm = Estimate.Normal(agrees - 40, 3, Origin.Measured) }, [.. Enumerable.Repeat(axis, 500)], 1);
        Assert.DoesNotContain(good.Remarks, static r => r.Contains("do not agree", StringComparison.Ordinal));
        Assert.Contains(bad.Remarks, static r => r.Contains("do not agree", StringComparison.Ordinal));
        Assert.Equal(40, bad.BeyondSkinDepthMm!.Value, 1.0);
    }

    [Fact]
    public void Zones_change_at_their_landmarks()
    {
        CavalAxis axis = Straight(65);
        double confluence = axis[CavalLandmark.BrachiocephalicConfluence];
        Assert.Equal(
            [AxisZone.NeckVein, AxisZone.UpperSvc, AxisZone.LowerSvc, AxisZone.UpperAtrium, AxisZone.LowerAtrium, AxisZone.SuprahepaticIvc, AxisZone.InfrahepaticIvc, AxisZone.InfrarenalIvc, AxisZone.IliofemoralVein],
            new[]
            {
                confluence - 0.1, confluence, confluence / 2, 0, axis[CavalLandmark.TricuspidCentre], axis[CavalLandmark.Icaj], axis[CavalLandmark.HepaticVein], axis[CavalLandmark.RenalVein], axis[CavalLandmark.IliacConfluence],
            }.Select(z => TipFinder.ZoneOf(axis, z)));
        Assert.Equal(AxisZone.LowerSvc, TipFinder.ZoneOf(axis, -0.001));
        Assert.Equal(AxisZone.LowerAtrium, TipFinder.ZoneOf(axis, 64.999));
    }

    [Fact]
    public void Parts_that_a_device_lacks_and_landmarks_on_the_skin_are_refused()
    {
        Cannula arterial = DeviceCatalogue.BuiltIn.Cannulae.First(static c => c.Family == CannulaFamily.ArterialReturn);
        Assert.Equal("feature", Assert.Throws<InputFaultException>(() => SeenFeature.ReturnPort(arterial)).Faults[0].Field);
        Assert.Equal("feature", Assert.Throws<InputFaultException>(() => SeenFeature.FirstHole(arterial)).Faults[0].Field);
        Assert.Equal("landmark", Assert.Throws<InputFaultException>(() => At(CavalLandmark.RightNeckSkin, 20, true)).Faults[0].Field);
        Assert.Throws<InputFaultException>(() => new SeenDistance(CavalLandmark.Scaj, true, Estimate.Normal(20, 1, Origin.Measured), DistanceWay.Straight, null, JunctionEdge.EustachianRim));
        Assert.Throws<InputFaultException>(() => new PlaneTilt(60.1, 0));
    }

    private static double Below(TipPlacement tip, CavalLandmark landmark) => tip.FromLandmarks.Single(d => d.Landmark == landmark).BelowMm.Value;

    private static TipPlacement Exact(CavalAxis axis, TipQuestion question) => TipFinder.Find(question, [axis, axis], 1);

    private static TipQuestion Port(double mm) => new(SeenFeature.ReturnPort(DualLumen), At(CavalLandmark.Scaj, mm, true), SkinSite.RightNeck, DeviceCourse.AlongAxis);

    private static SeenDistance At(CavalLandmark landmark, double mm, bool towardsFeet) => new(
        landmark, towardsFeet, Estimate.Normal(mm, 0, Origin.Measured), DistanceWay.Straight, PlaneTilt.InPlane, landmark == CavalLandmark.Scaj ? JunctionEdge.AppendageBorder : JunctionEdge.Unknown);

    private static CavalAxis Straight(double spanMm) => new CavalLumen(Shape(spanMm)).Axis;

    private static LumenShape Shape(double spanMm) => LumenShape.OfMedians(Man)
        .With(AxisDimension.AtrialSpan, spanMm).With(AxisDimension.CavalBendFrontal, 0).With(AxisDimension.CavalBendSagittal, 0).With(AxisDimension.MouthOffset, 0);
}
