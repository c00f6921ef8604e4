using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Support;
using Cavaxis.Arteries.Tests.Scaling;
using Cavaxis.Arteries.Tree;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Quantities;
using CsCheck;

namespace Cavaxis.Arteries.Tests.Support;

public class SteadyLegTests
{
    private static readonly string[] Sizes = ["15fr", "17fr", "19fr", "21fr", "23fr"];

    [Fact]
    public void A_wider_artery_leaves_the_leg_more_flow() =>
        Gen.Select(Gen.Double[5, 9], Gen.Double[0.2, 2], Gen.Int[0, 4]).Sample(
            static (mm, more, size) => Assert.True(Leg(mm + more, Sizes[size]) >= Leg(mm, Sizes[size]) * (1 - 1e-9)), iter: 100);

    [Fact]
    public void A_larger_cannula_never_leaves_the_leg_more_flow() =>
        Gen.Select(Gen.Double[5, 11], Gen.Int[0, 3]).Sample(static (mm, size) => Assert.True(Leg(mm, Sizes[size + 1]) <= Leg(mm, Sizes[size]) * (1 + 1e-9)), iter: 100);

    [Fact]
    public void A_side_graft_fills_nothing()
    {
        ArterialReturn entry = new(AccessArtery.AxillaryRight, Cannula("17fr"), SideGraft: true);
        Assert.Empty(CannulaPlacement.Of(SampleTrees.Of(), entry).Pieces);
    }

    [Fact]
    public void A_femoral_cannula_of_sixteen_centimetres_ends_in_an_iliac_artery()
    {
        PatientTree tree = SampleTrees.Of();
        CannulaPlacement placement = CannulaPlacement.Of(tree, new ArterialReturn(AccessArtery.FemoralLeft, Cannula("17fr")));
        Assert.Contains("iliac_L", tree.Segments[placement.TipSegment].Table.Name, StringComparison.Ordinal);
        Assert.InRange(placement.Pieces.Sum(static p => p.LengthM), 0.10, 0.12);
    }

    [Fact]
    public void An_axillary_cannula_does_not_pass_the_vertebral_artery()
    {
        PatientTree tree = SampleTrees.Of();
        CannulaPlacement placement = CannulaPlacement.Of(tree, new ArterialReturn(AccessArtery.AxillaryRight, Cannula("15fr")));
        Assert.Equal("subclavian_R_II", tree.Segments[placement.TipSegment].Table.Name);
    }

    [Fact]
    public void What_enters_leaves_by_the_ends()
    {
        PatientTree tree = SampleTrees.Of();
        int hip = ArterialTable.BuiltIn.IndexOf("common_iliac_R");
        (double[] flow, _) = new SteadyTree(tree, null, 1).Solve(12_000, (hip, 6e-5));
        double ends = Enumerable.Range(0, flow.Length).Where(i => tree.Segments[i].EndResistancePaSPerM3 is not null).Sum(i => flow[i]);
        Assert.Equal(flow[0] + 6e-5, ends, 1e-15);
    }

    [Fact]
    public void A_distal_perfusion_cannula_carries_more_when_the_arterial_cannula_is_narrower()
    {
        double[] flows = [.. Sizes.Select(static size => SideFlow(size, 4))];
        Assert.All(flows.Zip(flows.Skip(1)), static pair => Assert.True(pair.Second < pair.First));
        Assert.InRange(flows[1], 0.1, 0.8);
    }

    private static double SideFlow(string size, double pump)
    {
        PatientTree tree = SampleTrees.Of();
        ArterialReturn entry = new(AccessArtery.FemoralRight, Cannula(size));
        CannulaPlacement placement = CannulaPlacement.Of(tree, entry);
        return PerfusionFlow.LPerMin(
            new SteadyTree(tree, placement, SteadyTree.UsualFriction), tree, placement, entry, DeviceCatalogue.BuiltIn.Cannula("distal-7fr-10cm"), pump,
            tree.Beds.MeanPressurePa);
    }

    private static double Leg(double arteryMm, string size)
    {
        PatientTree tree = SampleTrees.Of((AccessArtery.FemoralRight, arteryMm));
        CannulaPlacement placement = CannulaPlacement.Of(tree, new ArterialReturn(AccessArtery.FemoralRight, Cannula(size)));
        (double[] flow, _) = new SteadyTree(tree, placement, SteadyTree.UsualFriction).Solve(
            tree.Beds.MeanPressurePa, (placement.TipSegment, 4 * UnitFactors.CubicMetresPerSecondPerLPerMin));
        return Enumerable.Range(0, flow.Length).Where(i => tree.Segments[i].Table.Territory == ArterialTerritory.LegRight).Sum(i => flow[i]);
    }

    private static Cannula Cannula(string size) => DeviceCatalogue.BuiltIn.Cannula("return-arterial-" + size + "-16cm");
}
