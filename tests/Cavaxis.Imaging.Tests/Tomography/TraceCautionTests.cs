using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Imaging.Tests.Tomography;

/// <summary>Lines that are no caval axis, or not the one meant, are given with the question a clinician would ask.</summary>
public sealed class TraceCautionTests
{
    [Fact]
    public void A_line_along_the_artery_says_that_no_atrium_lies_on_it_and_gives_no_measurement()
    {
        CavalPhantom made = new(PhantomSettings.Of(0));
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(new Vector3D(36, -4, made.UpperSeed.Z), new Vector3D(36, -4, made.LowerSeed.Z)));
        Assert.Contains(trace.Cautions, static c => c.Kind == TraceCautionKind.NoAtrium && c.Words.Contains("azygos", StringComparison.Ordinal));
        Assert.Empty(AxisReadings.Of(trace.Axis!));
    }

    [Fact]
    public void Two_vessels_side_by_side_that_read_alike_are_named_with_where_the_other_lies()
    {
        // The aorta is 14 mm in radius and lies 30 mm to the left.
        BentChest made = new(new BentSetting { SvcHu = 230, IvcHu = 190, NoiseHu = 10 });
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(made.UpperSeed, made.LowerSeed));
        TraceCaution caution = Assert.Single(trace.Cautions, static c => c.Kind == TraceCautionKind.NeighbourAlike);
        Assert.Contains("left of it", caution.Words, StringComparison.Ordinal);
        Assert.Matches("2[789] mm wide", caution.Words);
    }

    [Fact]
    public void A_single_vein_with_even_contrast_to_the_right_is_given_without_a_caution()
    {
        CavalPhantom made = new(new PhantomSetting { Neighbour = false, NoiseHu = 12, SvcHu = 260, IvcHu = 230 });
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(made.UpperSeed, made.LowerSeed));
        Assert.Null(trace.Failure);
        Assert.Empty(trace.Cautions);
    }

    [Fact]
    public void A_superior_vena_cava_far_to_the_left_is_named()
    {
        BentChest made = new(new BentSetting { SvcLean = (0.95, 0), SvcHu = 260, IvcHu = 200, NoiseHu = 10 });
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(made.UpperSeed, made.LowerSeed));
        Assert.Null(trace.Failure);
        Assert.True(made.UpperSeed.X > 25);
        Assert.Contains(trace.Cautions, static c => c.Kind == TraceCautionKind.LeftSided);
    }

    [Fact]
    public void Seeds_in_an_effusion_give_no_axis_or_are_said_to_read_like_fluid()
    {
        BentChest made = new(new BentSetting { Kind = BentKind.Effusion, NoiseHu = 12 });
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(new Vector3D(-48, 0, made.UpperSeed.Z), new Vector3D(-48, 0, made.Icaj.Z)));
        Assert.True(trace.Axis is null || trace.Cautions.Any(static c => c.Kind == TraceCautionKind.ReadsLikeFluid));
        Assert.False(trace.Axis?[CavalLandmark.Scaj].IsThere ?? false);
    }

    [Fact]
    public void Lime_in_a_wall_is_named_as_a_sign_of_an_artery()
    {
        BentChest made = new(new BentSetting { Kind = BentKind.LeadAndLime, SvcHu = 300, NoiseHu = 10 });
        Vector3D Aorta(double z) => new(30 + (5 * Math.Sin(z / 40)), -8, z);
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(Aorta(made.UpperSeed.Z), Aorta(made.LowerSeed.Z)));
        Assert.Contains(trace.Cautions, static c => c.Kind == TraceCautionKind.LimeAtWall && c.Words.Contains("arter", StringComparison.Ordinal));
    }

    [Fact]
    public void Contrast_that_fills_half_of_the_vein_below_is_named_as_a_step_of_its_calibre()
    {
        BentChest made = new(new BentSetting { Kind = BentKind.UnmixedBelow, IvcHu = 170, IvcRadiusMm = 11, NoiseHu = 10 });
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(made.UpperSeed, made.LowerSeed));
        Assert.True(trace.Axis is null || trace.Cautions.Any(static c => c.Kind is TraceCautionKind.CalibreStep or TraceCautionKind.OpenStretch), trace.Quality?.ToString());
    }
}
