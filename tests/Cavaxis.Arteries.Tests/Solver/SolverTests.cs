using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Cavaxis.Arteries.Tests.Transport;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Arteries.Tests.Solver;

public class SolverTests
{
    [Fact]
    public void A_step_allocates_nothing()
    {
        ArterialSimulation simulation = SmallTree.Simulation(0, 1);
        simulation.Advance(1);
        long before = GC.GetAllocatedBytesForCurrentThread();
        simulation.Advance(0.5);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Two_runs_are_the_same_to_the_last_bit()
    {
        ArterialSimulation one = SmallTree.Simulation(0, 1), two = SmallTree.Simulation(0, 1);
        one.Advance(2);
        two.Advance(2);
        foreach ((ArterialProbe a, ArterialProbe b) in SmallTree.Probes(one).Zip(SmallTree.Probes(two)))
        {
            Assert.Equal(one.Pressure(a), two.Pressure(b));
            Assert.Equal(one.Flow(a), two.Flow(b));
            Assert.Equal(one.Concentration(a, 1), two.Concentration(b, 1));
        }
    }

    [Fact]
    public void A_small_tree_is_the_same_in_either_direction_of_its_segments()
    {
        ArterialSimulation one = Chain(false), other = Chain(true);
        for (int i = 0; i < 10; i++)
        {
            one.Advance(0.03);
            other.Advance(0.03);
            double pressure = one.Pressure(one.Locate(new("b", 0.06)));
            Assert.Equal(pressure, other.Pressure(other.Locate(new("b", 0.14))), 1e-7 * (Math.Abs(pressure) + 1));
            Assert.Equal(one.Flow(one.Locate(new("b", 0.06))), -other.Flow(other.Locate(new("b", 0.14))), 1e-12);
        }
    }

    [Fact]
    public void Pressures_and_flows_scale_as_the_equations_do()
    {
        // Density, stiffness and viscosity times k: pressures times k, velocities as they were.
        Gen.Double[0.3, 3].Sample(
            k =>
            {
                ArterialSimulation plain = Scaled(1), scaled = Scaled(k);
                plain.Advance(0.2);
                scaled.Advance(0.2);
                double pressure = plain.Pressure(plain.Locate(new("v", 0.1)));
                Assert.Equal(k * pressure, scaled.Pressure(scaled.Locate(new("v", 0.1))), 1e-8 * Math.Abs(k * pressure) + 1e-8);
            },
            iter: 20);
    }

    [Fact]
    public void A_flow_that_would_outrun_its_waves_is_a_typed_fault()
    {
        ArterialSimulation simulation = new(new ArterialSetup(
            new([new("narrow", "in", "out", 0.2, 0.002, 0.002, 0.0002, 0.0002, 2e5, 0)], new BloodFluid(1060, 0.004, 9)),
            [new("in", new PressureEnd(static _ => 5000)), new("out", new PressureEnd(static t => 5000 - (20_000 * t)))],
            5000));
        ArterialFlowException fault = Assert.Throws<ArterialFlowException>(() => simulation.Advance(5));
        Assert.Equal("narrow", fault.Place.Segment);
        Assert.InRange(fault.Time, 0.001, 5);
    }

    [Fact]
    public void A_vessel_that_is_sucked_empty_is_a_typed_fault()
    {
        ArterialSimulation simulation = new(new ArterialSetup(
            new([new("thin", "in", "out", 0.2, 0.003, 0.003, 0.0003, 0.0003, 2e5, 0)], new BloodFluid(1060, 0.004, 9)),
            [new("in", new FlowInlet(static _ => 0)), new("out", new Resistance(1e10, 0))],
            500)
        { SideFlows = [new PointSource(new("thin", 0.1), static t => -2e-5 * t, new ConstantBlood())] });
        ArterialFlowException fault = Assert.Throws<ArterialFlowException>(() => simulation.Advance(5));
        Assert.True(Enum.IsDefined(fault.Kind));
    }

    [Fact]
    public void What_cannot_be_simulated_is_refused_by_name()
    {
        ArterialSetup good = SmallTree.Setup(0, 1);
        AssertFault("ends", () => new ArterialSimulation(good with { Ends = [.. good.Ends.Skip(1)] }));
        AssertFault("ends.node", () => new ArterialSimulation(good with { Ends = [.. SmallTree.Setup(0, 1).Ends, new("arch", new Resistance(1, 0))] }));
        AssertFault("ends.condition", () => new ArterialSimulation(good with { Ends = [.. good.Ends.Select(e => e with { Condition = good.Ends[0].Condition })] }));
        AssertFault("setup.courant (1)", () => new ArterialSimulation(good with { Courant = 1.2 }));
        AssertFault("setup.initialPressure (Pa)", () => new ArterialSimulation(good with { InitialPressure = -90_000 }));
        AssertFault("right.distance (m)", () => new ArterialSimulation(good with { SideFlows = [new PointSource(new("right", 3), static _ => 0, new ConstantBlood(0, 0))] }));
        AssertFault("right.body end (m)", () => new ArterialSimulation(good with { Bodies = [new LumenBody(new("right", 0.1), 1, static _ => 1e-6, false)] }));
    }

    private static void AssertFault(string field, Func<object> act) => Assert.Equal(field, Assert.Throws<InputFaultException>(act).Faults[0].Field);

    private static ArterialSimulation Chain(bool turned) => new(new ArterialSetup(
        new(
            [
                new("a", "in", "m", 0.2, 0.008, 0.007, 0.001, 0.001, 400e3, 0),
                turned ? new("b", "out", "m", 0.2, 0.005, 0.006, 0.001, 0.001, 400e3, 0) : new("b", "m", "out", 0.2, 0.006, 0.005, 0.001, 0.001, 400e3, 0),
            ],
            new BloodFluid(1060, 0.004, 9)),
        [new("in", new FlowInlet(static t => 1e-4 * Math.Exp(-1e3 * (t - 0.08) * (t - 0.08)))), new("out", new Resistance(1e8, 0))],
        0));

    private static ArterialSimulation Scaled(double k) => new(new ArterialSetup(
        new([new("v", "in", "out", 0.3, 0.008, 0.007, 0.001, 0.001, 4e5 * k, 0)], new BloodFluid(1060 * k, 0.004 * k, 9)),
        [new("in", new FlowInlet(static t => 1e-6 * Math.Exp(-1e3 * (t - 0.08) * (t - 0.08)))), new("out", new Resistance(1e8 * k, 0))],
        0));
}
