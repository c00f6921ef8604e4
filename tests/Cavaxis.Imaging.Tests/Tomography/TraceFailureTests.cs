using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>No axis is better than a wrong one.</summary>
public sealed class TraceFailureTests
{
    [Theory]
    [InlineData(60, 1)]
    [InlineData(100, 2)]
    [InlineData(30, 3)]
    public void Without_contrast_there_is_no_wall_and_the_noise_is_not_taken_for_one(double noise, int seed)
    {
        CavalPhantom made = new(new PhantomSetting { SvcHu = 45, IvcHu = 75, NoiseHu = noise, Seed = seed, VoxelMm = 1.5, SliceMm = 2.5 });
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest([made.UpperSeed, made.LowerSeed]));
        Assert.Null(trace.Axis);
        Assert.Equal(TraceFault.NoWall, trace.Failure!.Fault);
        Assert.Contains("limit", trace.Failure.Words, StringComparison.Ordinal);
        Assert.NotNull(trace.Course);
    }

    [Fact]
    public void Contrast_that_drowns_in_noise_is_refused()
    {
        CavalPhantom made = new(new PhantomSetting { SvcHu = 145, IvcHu = 175, NoiseHu = 150, VoxelMm = 1.5, SliceMm = 2.5 });
        Assert.Null(AxisTracer.Trace(made.Scan(), new TraceRequest([made.UpperSeed, made.LowerSeed])).Axis);
    }

    [Fact]
    public void A_way_from_one_vessel_into_another_is_refused()
    {
        CavalPhantom made = new(PhantomSettings.Of(0));
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest([new Vector3D(36, -4, made.UpperSeed.Z), made.LowerSeed]));
        Assert.Null(trace.Axis);
        Assert.Equal(TraceFault.WayLeavesLumen, trace.Failure!.Fault);
    }

    [Fact]
    public void A_seed_in_soft_tissue_beside_the_vein_is_refused()
    {
        CavalPhantom made = new(PhantomSettings.Of(5));
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest([made.UpperSeed + new Vector3D(0, -22, 0), made.LowerSeed]));
        Assert.Null(trace.Axis);
    }

    [Fact]
    public void A_seed_in_the_lung_is_named()
    {
        CavalPhantom made = new(PhantomSettings.Of(5));
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest([made.UpperSeed + new Vector3D(-45, 0, 0), made.LowerSeed]));
        Assert.Equal(TraceFault.SeedOutsideLumen, trace.Failure!.Fault);
        Assert.Null(trace.Course);
    }

    [Fact]
    public void A_seed_outside_of_the_scan_and_seeds_on_one_level_are_input_faults()
    {
        CavalPhantom made = new(new PhantomSetting { VoxelMm = 2, SliceMm = 3 });
        InputFaultException outside = Assert.Throws<InputFaultException>(() => AxisTracer.Trace(made.Scan(), new TraceRequest([new Vector3D(500, 0, 0), made.LowerSeed])));
        Assert.Equal("seed", outside.Faults[0].Field);
        Assert.Equal("seed.z", Assert.Throws<InputFaultException>(static () => new TraceRequest([new(0, 0, 0), new(80, 0, 10)])).Faults[0].Field);
        Assert.Equal("seed", Assert.Throws<InputFaultException>(static () => new TraceRequest([new(0, 0, 0)])).Faults[0].Field);
    }
}
