using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Meshes;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Meshes;

public class LumenSurfaceTests
{
    private const ulong Seed = 20261127;

    private static readonly AxisDistribution Adult = PopulationModel.For(Bodies.Adult);

    [Fact]
    public void A_ball_of_any_size_at_any_place_is_closed_without_a_hole() => Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[3, 30]).Sample(
        static (x, y, z, radius) =>
        {
            SurfaceMesh mesh = Of(new Ball(new Vector3D(x, y, z), radius), 2.5);
            Assert.True(mesh.IsClosed);
            Assert.Equal(2, mesh.EulerCharacteristic);
            Assert.InRange(mesh.VolumeMm3 / (4 * Math.PI / 3 * Math.Pow(radius, 3)), 0.75, 1);
            Assert.All(mesh.PointsMm, p => Assert.Equal(radius, (p - new Vector3D(x, y, z)).Length, 1e-5));
        },
        iter: 40);

    /// <summary>A chord lies within its arc by the square of its length, so area and volume come nearer by four where the spacing halves.</summary>
    [Fact]
    public void Area_and_volume_of_a_ball_come_nearer_at_second_order()
    {
        Ball ball = new(new Vector3D(0.3, -0.7, 0.2), 20);
        (double Area, double Volume)[] errors = [.. new[] { 3.0, 1.5, 0.75 }.Select(spacing =>
        {
            SurfaceMesh mesh = Of(ball, spacing);
            return (1 - (mesh.AreaMm2 / (4 * Math.PI * 400)), 1 - (mesh.VolumeMm3 / (4 * Math.PI / 3 * 8000)));
        })];
        for (int i = 1; i < errors.Length; i++)
        {
            Assert.InRange(errors[i - 1].Area / errors[i].Area, 3.5, 4.8);
            Assert.InRange(errors[i - 1].Volume / errors[i].Volume, 3.5, 4.8);
        }
    }

    [Fact]
    public void A_corner_of_the_lattice_that_lies_on_the_wall_makes_no_gap()
    {
        // The lattice of this box has points at whole numbers of its spacing, and this ball goes through many of them.
        SurfaceMesh mesh = LumenSurface.Of(new Ball(Vector3D.Zero, 8), new Vector3D(-8, -8, -8), new Vector3D(8, 8, 8), 2);
        Assert.True(mesh.IsClosed);
        Assert.Equal(2, mesh.EulerCharacteristic);
    }

    [Fact]
    public void The_wall_of_each_sampled_anatomy_is_closed_lies_on_the_wall_and_has_its_outside_outside()
    {
        foreach (CavalLumen lumen in Sampled(12))
        {
            SurfaceMesh mesh = LumenSurface.Of(lumen, 4);
            Assert.True(mesh.IsClosed);
            Assert.Equal(2, mesh.EulerCharacteristic);
            for (int i = 0; i < mesh.PointsMm.Length; i++)
            {
                Assert.Equal(0, lumen.At(mesh.PointsMm[i]).DistanceMm, 1e-5);
                Assert.True(lumen.At(mesh.PointsMm[i] + (0.2 * mesh.Outward[i])).DistanceMm > 0);
            }
        }
    }

    /// <summary>The volume once by the theorem of Gauss over the triangles, once by counting random points that the distance calls inside.</summary>
    [Fact]
    public void Volume_of_the_surface_is_that_of_the_points_inside()
    {
        CavalLumen lumen = Sampled(3)[2];
        SurfaceMesh mesh = LumenSurface.Of(lumen, 2);
        Vector3D low = new(mesh.PointsMm.Min(static p => p.X), mesh.PointsMm.Min(static p => p.Y), mesh.PointsMm.Min(static p => p.Z));
        Vector3D high = new(mesh.PointsMm.Max(static p => p.X), mesh.PointsMm.Max(static p => p.Y), mesh.PointsMm.Max(static p => p.Z));
        const int Count = 60;
        int inside = 0;
        for (int i = 0; i < Count * Count * Count * 4; i++)
        {
            double z = low.Z + ((high.Z - low.Z) * ((i / (Count * Count)) + 0.5) / (4 * Count));
            double y = low.Y + ((high.Y - low.Y) * ((i / Count % Count) + 0.5) / Count);
            double x = low.X + ((high.X - low.X) * ((i % Count) + 0.5) / Count);
            inside += lumen.At(new Vector3D(x, y, z)).DistanceMm < 0 ? 1 : 0;
        }

        double counted = inside / (4.0 * Count * Count * Count) * (high.X - low.X) * (high.Y - low.Y) * (high.Z - low.Z);
        Assert.InRange(mesh.VolumeMm3 / counted, 0.985, 1.005);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(21)]
    [InlineData(double.NaN)]
    public void A_spacing_out_of_range_is_named(double spacing)
    {
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => LumenSurface.Of(Sampled(1)[0], spacing)).Faults);
        Assert.Equal("spacingMm", fault.Field);
    }

    [Fact]
    public void A_tube_along_a_straight_path_has_the_volume_of_the_prism_and_is_closed()
    {
        SurfaceMesh mesh = PathSurface.Of([new(0, 0, 0), new(0, 0, 40), new(0, 0, 40), new(0, 0, 100)], 3, 12);
        Assert.True(mesh.IsClosed);
        Assert.Equal(2, mesh.EulerCharacteristic);
        Assert.Equal(12 * 0.5 * 9 * Math.Sin(2 * Math.PI / 12) * 100, mesh.VolumeMm3, 1e-9);
    }

    [Fact]
    public void A_tube_along_a_helix_is_closed_and_holds_nearly_its_section_times_its_length()
    {
        Vector3D[] helix = [.. Enumerable.Range(0, 400).Select(static i => new Vector3D(20 * Math.Cos(i * 0.05), 20 * Math.Sin(i * 0.05), 0.4 * i))];
        SurfaceMesh mesh = PathSurface.Of(helix, 2, 16);
        double length = helix.Zip(helix.Skip(1), static (a, b) => (b - a).Length).Sum();
        Assert.True(mesh.IsClosed);
        Assert.Equal(1, mesh.VolumeMm3 / (Math.PI * 4 * length), 0.03);
    }

    private static SurfaceMesh Of(Ball ball, double spacing)
    {
        Vector3D reach = ball.RadiusMm * new Vector3D(1, 1, 1);
        return LumenSurface.Of(ball, ball.MiddleMm - reach, ball.MiddleMm + reach, spacing);
    }

    private static CavalLumen[] Sampled(int count)
    {
        AxisSamples samples = AxisSampler.Draw(Adult, count, Seed);
        return [.. Enumerable.Range(0, count).Select(i => new CavalLumen(LumenShape.OfSample(samples, i, Seed)))];
    }
}
