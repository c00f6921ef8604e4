using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Tomography;

namespace Cavaxis.Imaging.Tests.Tomography;

public sealed class SeedSearchTests
{
    [Fact]
    public void One_bright_column_is_found_by_itself_and_its_seeds_give_the_axis()
    {
        PhantomSetting set = PhantomSettings.Of(5) with { Neighbour = false, IvcHu = 230 };
        CavalPhantom made = new(set);
        (IReadOnlyList<Vector3D> seeds, TraceFailure? failure) = SeedSearch.Find(made.Scan());
        Assert.Null(failure);
        AxisTrace trace = AxisTracer.Trace(made.Scan(), new TraceRequest(seeds));
        Assert.Null(trace.Failure);
        Assert.Equal(made.SpanMm, trace.Axis!.Directions!.Trunk.Length, 2.0);
    }

    [Fact]
    public void Beside_an_artery_or_the_spine_it_says_that_it_cannot()
    {
        CavalPhantom made = new(PhantomSettings.Of(5));
        (IReadOnlyList<Vector3D> seeds, TraceFailure? failure) = SeedSearch.Find(made.Scan());
        Assert.Empty(seeds);
        Assert.Equal(TraceFault.NoColumn, failure!.Fault);
    }

    [Fact]
    public void Without_contrast_it_says_that_it_cannot()
    {
        CavalPhantom made = new(new PhantomSetting { SvcHu = 45, IvcHu = 60, Neighbour = false, VoxelMm = 2, SliceMm = 3 });
        Assert.Equal(TraceFault.NoColumn, SeedSearch.Find(made.Scan()).Failure!.Fault);
    }
}
