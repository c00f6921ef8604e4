using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Tests.Networks;

public class ArterialNetworkTests
{
    private static readonly BloodFluid Blood = new(1060, 0.004, 9);

    [Fact]
    public void A_network_knows_its_nodes_branches_and_open_ends()
    {
        ArterialNetwork network = new([Tube("trunk", "a", "b"), Tube("left", "b", "c"), Tube("right", "b", "d")], Blood);
        Assert.Equal(["a", "c", "d"], network.OpenNodes);
        Assert.Equal([new SegmentEnd(0, true), new SegmentEnd(1, false), new SegmentEnd(2, false)], network.Branches[network.NodeOf("b")]);
    }

    [Fact]
    public void What_is_no_network_is_refused_by_name()
    {
        AssertFault("segments", () => new ArterialNetwork([], Blood));
        AssertFault("segments.name", () => new ArterialNetwork([Tube("x", "a", "b"), Tube("x", "b", "c")], Blood));
        AssertFault("x.distalNode", () => new ArterialNetwork([Tube("x", "a", "a")], Blood));
        AssertFault("segments", () => new ArterialNetwork([Tube("x", "a", "b"), Tube("y", "c", "d")], Blood));
        ArterialNetwork network = new([Tube("x", "a", "b")], Blood);
        AssertFault("segment", () => network.Locate(new NetworkPlace("y", 0)));
        AssertFault("x.distance (m)", () => network.Locate(new NetworkPlace("x", 0.3)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.1)]
    [InlineData(1e9)]
    public void A_segment_of_impossible_length_is_refused(double length) =>
        AssertFault("x.length (m)", () => new ArterialSegment("x", "a", "b", length, 0.01, 0.01, 0.001, 0.001, 4e5, 0));

    [Fact]
    public void Stiffness_and_wave_speed_are_those_of_the_first_benchmark_case()
    {
        // beta/A0 = 4.5135e6 Pa/m and c0 = 6.1721 m/s: mechanics-and-arteries.md a.2, case 1.
        double stiffness = TubeLaw.Stiffness(0.01, 0.0015, 400e3);
        Assert.Equal(4.5135e6, stiffness, 100.0);
        Assert.Equal(6.1721, TubeLaw.WaveSpeed(stiffness, TubeLaw.Area(0.01), 1050), 1e-4);
    }

    [Fact]
    public void A_thin_body_in_the_middle_of_the_lumen_doubles_and_more_the_friction()
    {
        Assert.Equal(1, LumenBody.RingFriction(0, 1e-5), 1e-9);

        // κ = 1/2: 1/(1 − κ⁴ − (1 − κ²)²/ln(1/κ)) times (1 − κ²)² of the same area of blood, from the textbook's flow through an annulus.
        double kappa = 0.5, flow = 1 - Math.Pow(kappa, 4) - (Math.Pow(1 - (kappa * kappa), 2) / Math.Log(1 / kappa));
        Assert.Equal(Math.Pow(1 - (kappa * kappa), 2) / flow, LumenBody.RingFriction(0.25, 0.75), 1e-9);
    }

    [Fact]
    public void A_wave_from_a_table_repeats_and_has_its_mean()
    {
        PeriodicWave wave = new([0, 1, 2], [0, 4, 0]);
        Assert.Equal(2, wave.Mean);
        Assert.Equal(1, wave.At(0.25));
        Assert.Equal(1, wave.At(4.25), 12);
        Assert.Equal(wave.At(1.75), wave.At(-0.25), 12);
    }

    private static ArterialSegment Tube(string name, string from, string to) => new(name, from, to, 0.1, 0.01, 0.01, 0.001, 0.001, 4e5, 0);

    private static void AssertFault(string field, Func<object> act) => Assert.Equal(field, Assert.Throws<InputFaultException>(act).Faults[0].Field);
}
