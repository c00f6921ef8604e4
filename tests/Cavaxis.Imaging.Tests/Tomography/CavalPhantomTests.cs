using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>Scans whose lengths, diameters and angles are known from their making (issue 7: 2 mm, 0.7 mm, 2 degrees at each of 20 settings).</summary>
public sealed class CavalPhantomTests
{
    private const double AboveSeedMm = 55;
    private const double BelowSeedMm = 65;

    public static TheoryData<int> All => [.. Enumerable.Range(0, 20)];

    [Theory]
    [MemberData(nameof(All))]
    public void Lengths_diameters_and_angles_come_out_at_every_noise_and_angle(int n)
    {
        PhantomSetting set = PhantomSettings.Of(n);
        CavalPhantom made = new(set);
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest([made.LowerSeed, made.UpperSeed]));
        Assert.Null(trace.Failure);
        TracedAxis axis = Assert.IsType<TracedAxis>(trace.Axis);
        AxisLandmark superior = axis[CavalLandmark.Scaj];
        AxisLandmark inferior = axis[CavalLandmark.Icaj];
        Assert.Equal(LandmarkOrigin.Proposed, superior.Origin);
        Assert.Equal(LandmarkOrigin.Proposed, inferior.Origin);
        Assert.Equal(AboveSeedMm, superior.ArcMm, 2.0);
        Assert.Equal(BelowSeedMm, axis.Line.LengthMm - inferior.ArcMm, 2.0);
        Assert.Equal(made.SpanMm, (inferior.Place - superior.Place).Length, 2.0);
        Assert.Equal(2 * set.SvcRadiusMm, axis.MeanDiameterMm(6, superior.ArcMm - 6), 0.7);
        Assert.Equal(2 * set.IvcRadiusMm, axis.MeanDiameterMm(inferior.ArcMm + 6, axis.Line.LengthMm - 6), 0.7);
        CavalDirections directions = Assert.IsType<CavalDirections>(axis.Directions);
        Assert.Equal(set.SvcFrontalDeg, directions.Svc.FrontalDeg, 2.0);
        Assert.Equal(set.SvcSagittalDeg, directions.Svc.SagittalDeg, 2.0);
        Assert.Equal(set.IvcFrontalDeg, directions.Ivc.FrontalDeg, 2.0);
        Assert.Equal(set.IvcSagittalDeg, directions.Ivc.SagittalDeg, 2.0);
        Assert.Equal(set.IvcFrontalDeg - set.SvcFrontalDeg, directions.BendFrontalDeg, 2.0);
        Assert.Equal(set.IvcSagittalDeg - set.SvcSagittalDeg, directions.BendSagittalDeg, 2.0);
        Assert.All(axis.Sections.Where(s => s.ArcMm < superior.ArcMm - 4), s => Assert.True(Beside(s.Centre, made.Scaj, made.SvcDown) < 1));
        Assert.All(axis.Sections.Where(s => s.ArcMm > inferior.ArcMm + 4), s => Assert.True(Beside(s.Centre, made.Icaj, made.IvcDown) < 1));
    }

    [Fact]
    public void A_confirmed_landmark_stands_in_place_of_the_proposed_one_with_the_edge_that_was_taken()
    {
        CavalPhantom made = new(PhantomSettings.Of(5));
        Vector3D shown = made.Scaj - (9 * made.SvcDown) + new Vector3D(4, 0, 0);
        TracedAxis axis = AxisTracer.Trace(made.Scan(), new TraceRequest(
            [made.UpperSeed, made.LowerSeed],
            [
                new ConfirmedLandmark(CavalLandmark.Scaj, shown, JunctionEdge.FirstAtrialSlice),
                new ConfirmedLandmark(CavalLandmark.BrachiocephalicConfluence, made.UpperSeed + (5 * made.SvcDown)),
                new ConfirmedLandmark(CavalLandmark.HepaticVein, made.Icaj + new Vector3D(90, 0, -20)),
            ])).Axis!;
        AxisLandmark superior = axis[CavalLandmark.Scaj];
        Assert.Equal((LandmarkOrigin.Confirmed, JunctionEdge.FirstAtrialSlice), (superior.Origin, superior.Edge));
        Assert.Equal(AboveSeedMm - 9, superior.ArcMm, 1.5);
        Assert.Equal(LandmarkOrigin.NotFound, axis[CavalLandmark.HepaticVein].Origin);
        Assert.Contains("beside the line", axis[CavalLandmark.HepaticVein].Reason, StringComparison.Ordinal);
        Assert.Contains(AxisReadings.Of(axis), static r => r.Single == AxisDimension.SvcLength && Math.Abs(r.Value - 41) < 2 && r.SuperiorEdge == JunctionEdge.FirstAtrialSlice);
    }

    private static double Beside(Vector3D place, Vector3D on, Vector3D way)
    {
        Vector3D off = place - on;
        return (off - (off.Dot(way) * way)).Length;
    }
}
