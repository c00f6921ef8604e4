using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Tests.Waves;

public class EndTests
{
    [Fact]
    public void A_windkessel_left_alone_empties_with_its_time_constant()
    {
        // A short stiff vessel holds next to nothing: P = P0 exp(−t/(R2 C)).
        ArterialSimulation simulation = new(new ArterialSetup(
            new([new("stub", "shut", "end", 0.02, 0.002, 0.002, 0.001, 0.001, 1e8, 0)], new BloodFluid(1060, 0, 2)),
            [new("shut", new FlowInlet(static _ => 0)), new("end", new Windkessel(1e7, 1e9, 5e-10, 0, 10_000))],
            10_000)
        { CellLength = 0.01 });
        simulation.Advance(0.5);
        Assert.Equal(10_000 * Math.Exp(-1), simulation.Pressure(simulation.Locate(new("stub", 0.01))), 1.0);
    }

    [Fact]
    public void A_windkessel_converges_with_the_square_of_the_step()
    {
        // Fed through R1 from a wide vessel that holds its pressure: the exact approach to its end is exponential.
        const double R1 = 1e9, R2 = 2e9, C = 2e-10, Feed = 12_000, Stiffness = 1e7;
        double Error(int steps)
        {
            Windkessel windkessel = new(R1, R2, C, 0, 0);
            VesselEnd end = new(100, 0, Stiffness, Feed - (10 * Stiffness), 0, 1060);
            for (int i = 0; i < steps; i++)
            {
                windkessel.FlowOut(in end, (double)i / steps, 1.0 / steps);
            }

            double series = R1 + end.Impedance, tau = C / ((1 / series) + (1 / R2));
            return Math.Abs(windkessel.Pressure - (Feed * R2 / (series + R2) * (1 - Math.Exp(-1 / tau))));
        }

        Assert.InRange(Math.Log2(Error(20) / Error(40)), 1.9, 2.1);
        Assert.InRange(Math.Log2(Error(40) / Error(80)), 1.9, 2.1);
    }

    [Fact]
    public void The_flow_into_a_load_meets_the_load_and_the_wave_that_arrives()
    {
        VesselEnd end = new(1e-4, 0.3, 4e6, 0, 0, 1060);
        double flow = end.FlowInto(20_000, 1e8), area = end.AreaAtFlow(flow);
        Assert.Equal(20_000 + (1e8 * flow), end.PressureAt(area), 1e-4);
        Assert.Equal(0.3 + (4 * end.WaveSpeedAt(1e-4)), (flow / area) + (4 * end.WaveSpeedAt(area)), 1e-9);
        Assert.Equal(end.PressureAtFlow(end.FlowOut), end.Pressure, 1e-6);
        double small = 1e-9;
        Assert.Equal(-end.Impedance, (end.PressureAtFlow(end.FlowOut + small) - end.PressureAtFlow(end.FlowOut - small)) / (2 * small), 1e-4 * end.Impedance);
    }

    [Fact]
    public void A_steady_flow_loses_the_pressure_of_poiseuille()
    {
        // 8 μ L Q/(π R⁴), the vessel so stiff that its radius stays.
        ArterialSimulation simulation = new(new ArterialSetup(
            new([new("pipe", "in", "out", 0.5, 0.003, 0.003, 0.001, 0.001, 1e8, 0)], new BloodFluid(1060, 0.004, 2)),
            [new("in", new FlowInlet(static t => 1e-6 * Math.Min(1, 5 * t))), new("out", new Resistance(1e9, 0))],
            0)
        { CellLength = 0.02 });
        simulation.Advance(6);
        double drop = simulation.Pressure(simulation.Locate(new("pipe", 0.1))) - simulation.Pressure(simulation.Locate(new("pipe", 0.4)));
        Assert.Equal(8 * 0.004 * 0.3 * 1e-6 / (Math.PI * Math.Pow(0.003, 4)), drop, 0.02);
    }
}
