using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Tests.Echo;

public class DevicePictureTests
{
    private static readonly CoilWinding Winding = new(0.25, 0.6, 10);

    // Each wall is passed twice on each of two ways; the loss of one passage follows from what winding and polymer throw back and take up.
    [Fact]
    public void Tissue_below_a_wound_cannula_lies_in_its_shadow()
    {
        DeviceAssembly device = EchoBench.Cannula(20, AssemblyState.CannulaAlone, 250, Winding);
        Surroundings vessel = Surroundings.Vessel(device.Curve, 6, 0.5, 0);
        EchoDisplay display = new(64, 64, noiseDb: -120);
        double beside = PowerDb(EchoRenderer.Render(new EchoScene(1, vessel, null, []), EchoBench.Plane, EchoBench.Linear(), display), 36, 46);
        double below = PowerDb(EchoRenderer.Render(new EchoScene(1, vessel, device, []), EchoBench.Plane, EchoBench.Linear(), display), 36, 46);
        double theory = 4 * (Winding.LossDb + (0.3 * 5 * device.WallMm) - (0.015 * 5 * device.WallMm));
        Assert.InRange((beside - below) / theory, 0.75, 1.25);
        Assert.True(beside - below > 15);
    }

    [Fact]
    public void A_wire_hides_a_part_of_what_lies_behind_it_and_steel_wound_into_the_wall_hides_more_than_a_plain_wall()
    {
        Surroundings vessel = Surroundings.Vessel(EchoBench.Cannula(20, AssemblyState.WireOnly).Curve, 6, 0.5, 0);
        EchoDisplay display = new(64, 64, noiseDb: -120);
        double Below(DeviceAssembly? device) => PowerDb(EchoRenderer.Render(new EchoScene(1, vessel, device, []), EchoBench.Plane, EchoBench.Linear(), display), 40, 46);
        double open = Below(null);
        double wire = Below(EchoBench.Cannula(20, AssemblyState.WireOnly, 250));
        double plain = Below(EchoBench.Cannula(20, AssemblyState.CannulaAlone, 250));
        double wound = Below(EchoBench.Cannula(20, AssemblyState.CannulaAlone, 250, Winding));
        Assert.True(open - wire > 1);
        Assert.True(open - plain > 2);
        Assert.True(plain - wound > 6);
    }

    // To and fro across the lumen is twice its diameter; as depth, half of that.
    [Fact]
    public void Echoes_across_the_lumen_repeat_one_inner_diameter_apart()
    {
        DeviceAssembly device = EchoBench.Cannula(15, AssemblyState.CannulaAlone, 250, Winding);
        EchoFrame frame = EchoRenderer.Render(new EchoScene(1, Surroundings.WaterBath, device, []), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        double[] line = EchoBench.Middle(frame);
        double inner = device.InnerRadiusMm(250);
        double wall = 15 + inner;
        double first = Find(line, frame, 15 + (3 * inner));
        double second = Find(line, frame, 15 + (5 * inner));
        Assert.InRange(first - wall, (2 * inner) - 0.1, (2 * inner) + 0.1);
        Assert.InRange(second - first, (2 * inner) - 0.1, (2 * inner) + 0.1);
        double step = 20 * Math.Log10(DeviceEchoes.WallReflection(device));
        Assert.InRange(20 * Math.Log10(At(line, frame, second) / At(line, frame, first)), (2 * step) - 2, (2 * step) + 2);
    }

    // Through 2 mm of steel at 5900 m/s (from memory) and back takes as long as through 2 × 1540/5900 mm of tissue.
    [Fact]
    public void A_wire_trails_echoes_at_the_time_through_its_steel()
    {
        DeviceAssembly device = EchoBench.Cannula(20, AssemblyState.WireOnly, 250, wire: 2);
        Probe probe = new(ProbeKind.Linear, 10, 40, 20, 10, widthMm: 20, sliceApertureMm: 4, sliceFocusMm: 20);
        EchoFrame frame = EchoRenderer.Render(new EchoScene(1, Surroundings.WaterBath, device, []), EchoBench.Plane, probe, EchoBench.Quiet);
        double[] line = EchoBench.Middle(frame);
        double spacing = 2 * 1540.0 / 5900;
        double first = Find(line, frame, 19 + spacing, 0.2);
        for (int n = 2; n <= 3; n++)
        {
            Assert.InRange(Find(line, frame, 19 + (n * spacing), 0.2) - first, ((n - 1) * spacing) - 0.06, ((n - 1) * spacing) + 0.06);
        }
    }

    [Fact]
    public void A_hole_is_a_gap_in_the_wall()
    {
        DeviceAssembly device = EchoBench.Cannula(20, AssemblyState.CannulaAlone, 17, null, turnDeg: 0);
        (double fromTip, _, double angle) = device.Holes.First(h => Math.Abs(h.FromTip - 17) < 11 && Looks(device, h) < -0.99);
        EchoFrame frame = EchoRenderer.Render(new EchoScene(1, Surroundings.WaterBath, device, []), EchoBench.Plane, EchoBench.Linear(7), EchoBench.Quiet);
        double wall = 20 - device.OuterRadiusMm(fromTip);
        double gap = Loudest(frame, 17 - fromTip, wall - 0.5, wall + 0.4);
        double beside = Loudest(frame, 17 - fromTip - 3, wall - 0.5, wall + 0.4);
        Assert.True(20 * Math.Log10(beside / gap) > 8, $"{beside} over the wall, {gap} over the hole at {angle}");
    }

    [Fact]
    public void A_cannula_is_two_bright_walls_about_a_dark_lumen_and_a_wire_one_line()
    {
        DeviceAssembly device = EchoBench.Cannula(20, AssemblyState.CannulaAlone, 250);
        Surroundings vessel = Surroundings.Vessel(device.Curve, 9, 1, 0);
        EchoFrame frame = EchoRenderer.Render(new EchoScene(1, vessel, device, []), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
        double outer = device.OuterRadiusMm(250);
        double tissue = Loudest(frame, 0, 4, 9);
        double lumen = Loudest(frame, 0, 19, 21);
        Assert.True(Loudest(frame, 0, 20 - outer - 0.4, 20 - outer + 0.4) > 5 * tissue);
        Assert.True(Loudest(frame, 0, 20 + outer - 1.2, 20 + outer + 0.2) > 3 * tissue);
        Assert.True(lumen < 0.3 * tissue);
    }

    // A mirror that is turned by more than half the angle of the aperture throws its echo past it: tan = D/(2z).
    [Fact]
    public void A_turned_surface_is_darker_than_one_that_faces_the_probe()
    {
        EchoFrame faced = Turned(0);
        EchoFrame turned = Turned(25);
        Assert.True(Loudest(faced, 0, 15, 25) > 8 * Loudest(turned, 0, 15, 25));
    }

    private static EchoFrame Turned(double angleDeg)
    {
        (double sin, double cos) = Math.SinCos(angleDeg * Math.PI / 180);
        SpaceCurve curve = new([new Vector3D(0, 20 - (200 * sin), -200 * cos), new Vector3D(0, 20, 0), new Vector3D(0, 20 + (200 * sin), 200 * cos)]);
        DeviceAssembly device = new(EchoBench.Cannula(20, AssemblyState.WireOnly).Cannula, AssemblyState.WireOnly, curve, 300);
        return EchoRenderer.Render(new EchoScene(1, Surroundings.WaterBath, device, []), EchoBench.Plane, EchoBench.Linear(), EchoBench.Quiet);
    }

    // −1 where a hole looks at the probe.
    private static double Looks(DeviceAssembly device, (double FromTip, double Radius, double Angle) hole)
    {
        (Vector3D normal, Vector3D binormal) = device.Curve.Frame(device.TipMm - hole.FromTip);
        return ((Math.Cos(hole.Angle) * normal) + (Math.Sin(hole.Angle) * binormal)).Dot(EchoBench.Plane.Depth);
    }

    private static double Loudest(EchoFrame frame, double right, double from, double to)
    {
        int line = (int)Math.Round((right / 30 * (frame.Beams.Lines - 1)) + ((frame.Beams.Lines - 1) / 2.0));
        return Enumerable.Range((int)(from / frame.Beams.SampleMm), (int)((to - from) / frame.Beams.SampleMm)).Max(s => frame.Beams.At(line, s));
    }

    private static double Find(double[] line, EchoFrame frame, double near, double within = 0.35) =>
        EchoBench.Peak(line, (int)((near - within) / frame.Beams.SampleMm), (int)((near + within) / frame.Beams.SampleMm)) * frame.Beams.SampleMm;

    private static double At(double[] line, EchoFrame frame, double depth) => line[(int)Math.Round(depth / frame.Beams.SampleMm)];

    private static double PowerDb(EchoFrame frame, double from, double to)
    {
        double sum = 0;
        int count = 0;
        for (int s = (int)(from / frame.Beams.SampleMm); s < to / frame.Beams.SampleMm; s++)
        {
            for (int l = frame.Beams.Lines / 4; l < frame.Beams.Lines * 3 / 4; l++)
            {
                sum += frame.Beams.At(l, s) * frame.Beams.At(l, s);
                count++;
            }
        }

        return 10 * Math.Log10(sum / count);
    }
}
