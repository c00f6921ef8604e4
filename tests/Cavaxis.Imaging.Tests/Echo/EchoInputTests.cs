using Cavaxis.Anatomy.Space;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Imaging.Echo;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Echo;

public class EchoInputTests
{
    [Theory]
    [InlineData("probe.frequencyMHz", 0.5, 50)]
    [InlineData("probe.frequencyMHz", double.NaN, 50)]
    [InlineData("probe.depthMm", 5, 1e9)]
    public void A_probe_that_cannot_be_is_refused_by_name(string field, double frequency, double depth) =>
        Assert.Equal(field, Fault(() => new Probe(ProbeKind.Linear, frequency, depth, 30, 12)));

    [Fact]
    public void Other_input_that_cannot_be_is_refused_by_name()
    {
        Assert.Equal("plane.direction", Fault(() => new ScanPlane(default, default)));
        Assert.Equal("curve.points", Fault(() => new SpaceCurve([default])));
        Assert.Equal("curve.pointDistanceMm", Fault(() => new SpaceCurve([default, default])));
        Assert.Equal("vessel.radiusMm", Fault(() => Surroundings.Vessel(new SpaceCurve([default, new Vector3D(0, 0, 10)]), 0)));
        Assert.Equal("winding.pitchMm", Fault(() => new CoilWinding(0.5, 0.5)));
        Assert.Equal("display.gainDb", Fault(() => new EchoDisplay(gainDb: 99)));
        Assert.Equal("motion.breathMm", Fault(() => new SceneMotion(breathMm: new Vector3D(0, 0, 99))));
        SpaceCurve curve = new([default, new Vector3D(0, 0, 300)]);
        Assert.Equal("device.cannula", Fault(() => new DeviceAssembly(DeviceCatalogue.BuiltIn.Cannula("bicaval-27fr-29cm"), AssemblyState.CannulaAlone, curve, 200)));
        Assert.Equal("device.wireDiameterMm", Fault(() => new DeviceAssembly(DeviceCatalogue.BuiltIn.Cannula("distal-5fr-8cm"), AssemblyState.WireBackIn, curve, 200, 1.9)));
    }

    [Fact]
    public void Roll_turns_the_picture_about_the_way_the_probe_looks()
    {
        ScanPlane plane = new(new Vector3D(1, 2, 3), new Vector3D(0, 2, 0), 90);
        Assert.Equal(0, (plane.Right - new Vector3D(1, 0, 0)).Length, 9);
        (double x, double e, double z) = plane.Within(plane.Place(4, 5, 6));
        Assert.Equal((4.0, 6.0, 5.0), (Math.Round(x, 9), Math.Round(e, 9), Math.Round(z, 9)));
        Assert.Equal(0, (new ScanPlane(default, new Vector3D(0, 0, 3)).Right - new Vector3D(1, 0, 0)).Length, 9);
    }

    [Fact]
    public void A_curve_keeps_its_length_and_goes_on_straight()
    {
        SpaceCurve quarter = new([.. Enumerable.Range(0, 19).Select(static i => 100 * new Vector3D(Math.Cos(i * Math.PI / 36), Math.Sin(i * Math.PI / 36), 0))]);
        Assert.InRange(quarter.LengthMm, (50 * Math.PI) - 1.5, 50 * Math.PI);
        Vector3D end = quarter.At(quarter.LengthMm);
        Assert.Equal(10, (quarter.At(quarter.LengthMm + 10) - end).Length, 3);
        Assert.InRange(Math.Abs(quarter.Tangent(78).Dot(new Vector3D(0, 0, 1))), 0, 1e-9);
        Assert.InRange((quarter.At(78.5) - (70.71 * new Vector3D(1, 1, 0))).Length, 0, 0.2);
    }

    private static string Fault(Func<object> action) => Assert.Single(Assert.Throws<InputFaultException>(action).Faults).Field;
}
