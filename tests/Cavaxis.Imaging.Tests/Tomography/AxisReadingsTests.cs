using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Population;
using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Imaging.Tests.Tomography;

public sealed class AxisReadingsTests
{
    [Fact]
    public void What_was_traced_conditions_the_anatomy()
    {
        PhantomSetting set = PhantomSettings.Of(8);
        CavalPhantom made = new(set);
        TracedAxis axis = AxisTracer.Trace(made.Scan(), new TraceRequest([made.UpperSeed, made.LowerSeed])).Axis!;
        IReadOnlyList<AxisMeasurement> readings = AxisReadings.Of(axis);
        AxisDimension[] known = [AxisDimension.AtrialSpan, AxisDimension.CavalBendFrontal, AxisDimension.CavalBendSagittal, AxisDimension.MouthOffset, AxisDimension.SvcDiameter, AxisDimension.IvcDiameter];
        Assert.Equal(known, readings.Select(static r => r.Single!.Value).Order());
        Assert.Equal(JunctionEdge.Unknown, readings[0].SuperiorEdge);
        AxisDistribution before = PopulationModel.For(new BodyHabitus(45, Sex.Female, 165, 70), NeckEntry.Unknown);
        AxisDistribution after = before.Given(readings);
        Assert.Equal(set.IvcSagittalDeg - set.SvcSagittalDeg, after.Median(AxisDimension.CavalBendSagittal), 3.0);
        Assert.Equal(2 * set.SvcRadiusMm, after.Median(AxisDimension.SvcDiameter), 1.0);
        Assert.Equal(2 * set.IvcRadiusMm, after.Median(AxisDimension.IvcDiameter), 1.0);
        Assert.All(readings, r => Assert.True(Math.Abs(after.Median(r.Single!.Value) - r.Value) <= Math.Abs(before.Median(r.Single!.Value) - r.Value) + 1e-9));
    }

    [Fact]
    public void The_mouth_offset_and_the_bends_are_those_of_the_population_model()
    {
        // SVC straight down, IVC 20 degrees to the right, mouths 60 mm apart along the bisector (10 degrees) and 5 mm to its right.
        double degree = Math.PI / 180;
        VesselDirection svc = new(new(0, 0, -1), 0.5, 30);
        VesselDirection ivc = new(new(-Math.Sin(20 * degree), 0, -Math.Cos(20 * degree)), 0.5, 30);
        Cavaxis.Anatomy.Space.Vector3D bisector = new(-Math.Sin(10 * degree), 0, -Math.Cos(10 * degree));
        Cavaxis.Anatomy.Space.Vector3D right = new(-Math.Cos(10 * degree), 0, Math.Sin(10 * degree));
        CavalDirections directions = new(svc, ivc, (60 * bisector) + (5 * right));
        Assert.Equal(20, directions.BendFrontalDeg, 1e-9);
        Assert.Equal(0, directions.BendSagittalDeg, 1e-9);
        Assert.Equal(5, directions.MouthOffsetMm, 1e-9);
        Assert.Equal(20, directions.BendDeg, 1e-9);
    }
}
