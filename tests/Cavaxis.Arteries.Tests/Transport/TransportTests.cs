using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Tests.Transport;

public class TransportTests
{
    [Fact]
    public void Volume_and_tracer_are_kept_over_many_beats_with_every_kind_of_source_and_end()
    {
        ArterialSimulation simulation = SmallTree.Simulation(0.3, 0.7);
        double volume = Volume(simulation), first = Tracer(simulation, 0), second = Tracer(simulation, 1);
        for (int beat = 0; beat < 40; beat++)
        {
            simulation.Advance(SmallTree.Period);
        }

        double through = 40 * SmallTree.Period * 6e-5;
        Assert.Equal(volume, Volume(simulation), 1e-10 * through);
        Assert.Equal(first, Tracer(simulation, 0), 1e-10 * through);
        Assert.Equal(second, Tracer(simulation, 1), 1e-10 * through);
    }

    [Fact]
    public void No_tracer_leaves_the_range_of_what_enters()
    {
        ArterialSimulation simulation = SmallTree.Simulation(0, 1);
        ArterialProbe[] probes = SmallTree.Probes(simulation);
        for (int i = 0; i < 500; i++)
        {
            simulation.Advance(0.02);
            foreach (ArterialProbe probe in probes)
            {
                Assert.InRange(simulation.Concentration(probe, 0), -1e-12, 1 + 1e-12);
                Assert.InRange(simulation.Concentration(probe, 1), -1e-12, 1 + 1e-12);
            }
        }
    }

    [Fact]
    public void Blood_of_one_kind_stays_of_one_kind()
    {
        ArterialSimulation simulation = SmallTree.Simulation(0.5, 0.5);
        simulation.Advance(5);
        Assert.All(SmallTree.Probes(simulation), probe => Assert.Equal(0.5, simulation.Concentration(probe, 0), 1e-11));
    }

    [Fact]
    public void A_front_stays_within_a_few_cells_and_keeps_its_speed()
    {
        // Steady flow in a stiff tube: the front travels at the mean velocity; half of it must lie where the volume says.
        const double Flow = 5e-6, Cell = 0.002;
        ArterialSimulation simulation = new(new ArterialSetup(
            new([new("tube", "in", "out", 0.6, 0.004, 0.004, 0.001, 0.001, 1e7, 0)], new BloodFluid(1060, 0.004, 2)),
            [new("in", new FlowInlet(static t => Flow * Math.Min(1, 5 * t)), new FromTime(2)), new("out", new Resistance(1e9, 0))],
            0)
        { CellLength = Cell, InitialTracers = [0] });
        simulation.Advance(2);
        double area = simulation.Area(simulation.Locate(new("tube", 0.2)));
        simulation.Advance(0.4 * area / Flow);
        double[] profile = [.. Enumerable.Range(0, 300).Select(i => simulation.Concentration(simulation.Locate(new("tube", (i + 0.5) * Cell)), 0))];
        double half = (Array.FindIndex(profile, static c => c < 0.5) * Cell);
        Assert.Equal(0.4, half, 2 * Cell);
        Assert.InRange(profile.Count(static c => c is > 0.05 and < 0.95), 0, 6);
        Assert.All(profile.Zip(profile.Skip(1)), static pair => Assert.True(pair.First >= pair.Second - 1e-12));
    }

    [Fact]
    public void Two_streams_mix_at_a_node_by_their_flows()
    {
        ArterialSimulation simulation = new(new ArterialSetup(
            new(
                [
                    new("left", "a", "c", 0.1, 0.004, 0.004, 0.0008, 0.0008, 1e6, 0),
                    new("right", "b", "c", 0.1, 0.004, 0.004, 0.0008, 0.0008, 1e6, 0),
                    new("down", "c", "d", 0.1, 0.005, 0.005, 0.0008, 0.0008, 1e6, 0),
                ],
                new BloodFluid(1060, 0.004, 2)),
            [
                new("a", new FlowInlet(static t => 3e-6 * Math.Min(1, t)), new ConstantBlood(1)),
                new("b", new FlowInlet(static t => 1e-6 * Math.Min(1, t)), new ConstantBlood(0)),
                new("d", new Resistance(1e9, 0)),
            ],
            0)
        { CellLength = 0.005, InitialTracers = [0] });
        simulation.Advance(25);
        Assert.Equal(0.75, simulation.Concentration(simulation.Locate(new("down", 0.09)), 0), 1e-6);
    }

    [Fact]
    public void Transport_alone_on_a_recorded_beat_comes_to_what_the_whole_solver_comes_to()
    {
        ArterialSimulation whole = SmallTree.Simulation(0, 1), recorded = SmallTree.Simulation(0, 1);
        Assert.True(PeriodicFlow.Settle(recorded, SmallTree.Period, 1e-6, 120).IsPeriodic);
        BeatTransport transport = BeatTransport.Record(recorded, SmallTree.Period);
        double kept = transport.TracerAmount(1) - transport.TracerEntered(1);
        Assert.True(transport.RunUntilPeriodic(1e-7, 400));
        Assert.InRange(transport.ClosingFlow, 0, 1e-9);
        Assert.Equal(kept, transport.TracerAmount(1) - transport.TracerEntered(1), 1e-10 * transport.Beats * 6e-5);
        for (int beat = 0; beat < 120; beat++)
        {
            whole.Advance(SmallTree.Period);
        }

        ArterialProbe[] probes = SmallTree.Probes(whole);
        Assert.All(probes, probe => Assert.Equal(whole.Concentration(probe, 1), transport.Concentration(probe, 1), 0.03));
        Assert.Equal(whole.ConcentrationAtEnd("leg", 1), transport.ConcentrationAtEnd("leg", 1), 0.005);
    }

    private static double Volume(ArterialSimulation s) => s.VesselVolume + s.StoredVolume - s.EnteredVolume;

    private static double Tracer(ArterialSimulation s, int tracer) => s.TracerAmount(tracer) - s.TracerEntered(tracer);

    /// <summary>Clear blood up to a moment, marked blood from then on.</summary>
    private sealed class FromTime(double start) : ITracerSource
    {
        public double Concentration(int tracer, double time) => time < start ? 0 : 1;
    }
}
