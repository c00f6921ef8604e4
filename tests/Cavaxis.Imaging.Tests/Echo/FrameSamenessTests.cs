using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Echo;

namespace Cavaxis.Imaging.Tests.Echo;

public class FrameSamenessTests
{
    private static readonly Probe Small = new(ProbeKind.Convex, 3, 70, 40, 15, radiusMm: 40, angleDeg: 50, sliceApertureMm: 10, sliceFocusMm: 40);
    private static readonly DeviceAssembly Device = EchoBench.Cannula(35, AssemblyState.WireBackIn, 10, new CoilWinding());
    private static readonly EchoScene Scene = new(7, Surroundings.Vessel(Device.Curve, 8), Device, []);

    [Fact]
    public void The_same_seed_gives_the_same_bytes_and_another_seed_others()
    {
        EchoDisplay display = new(160, 160);
        byte[] one = EchoRenderer.Render(Scene, EchoBench.Plane, Small, display).Image.Samples.ToArray();
        Assert.Equal(one, EchoRenderer.Render(Scene, EchoBench.Plane, Small, display).Image.Samples.ToArray());
        Assert.NotEqual(one, EchoRenderer.Render(Scene with { Seed = 8 }, EchoBench.Plane, Small, display).Image.Samples.ToArray());
        Assert.Equal(one, EchoLoop.Frames(Scene, EchoBench.Plane, Small, display, new SceneMotion(), 1)[0].Image.Samples.ToArray());
    }

    [Fact]
    public void The_probe_turned_round_sees_the_mirror_picture()
    {
        EchoDisplay display = new(160, 160, noiseDb: -120);
        EchoFrame one = EchoRenderer.Render(Scene, EchoBench.Plane, Small, display);
        EchoFrame other = EchoRenderer.Render(Scene, new ScanPlane(default, new Vector3D(0, 1, 0), 180), Small, display);
        int unlike = 0;
        for (int y = 0; y < 160; y++)
        {
            for (int x = 0; x < 160; x++)
            {
                unlike += Math.Abs(one.Image.Brightness(x, y) - other.Image.Brightness(159 - x, y)) > 2 ? 1 : 0;
            }
        }

        // Sums in another order round otherwise, which shows only where echoes cancel.
        Assert.InRange(unlike, 0, 160 * 160 / 100);
    }

    [Fact]
    public void A_loop_moves_what_it_is_told_to_move()
    {
        SceneMotion motion = new(10, 15, new Vector3D(0, 0, 12), 0.5, 60, 0, 20);
        (EchoScene start, ScanPlane from) = motion.At(Scene, EchoBench.Plane, 0);
        Assert.Equal((8.0, 60.0, 0.0), (start.Surroundings.RadiusMm, start.Device!.WireBeyondTipMm, from.Origin.Length));
        (EchoScene top, ScanPlane moved) = motion.At(Scene, EchoBench.Plane, 2);
        Assert.Equal(4, top.Surroundings.RadiusMm, 9);
        Assert.Equal(100, top.Device!.WireBeyondTipMm, 9);
        Assert.Equal(-12, moved.Origin.Z, 9);
        List<int> told = [];
        IReadOnlyList<EchoFrame> frames = EchoLoop.Frames(Scene, EchoBench.Plane, Small, new EchoDisplay(96, 96), motion, 2, new Told(told));
        Assert.Equal([1, 2], told);
        Assert.NotEqual(frames[0].Image.Samples.ToArray(), frames[1].Image.Samples.ToArray());
    }

    private sealed class Told(List<int> list) : IProgress<int>
    {
        public void Report(int value) => list.Add(value);
    }
}
