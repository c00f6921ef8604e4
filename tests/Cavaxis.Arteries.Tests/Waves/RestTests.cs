using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Tests.Waves;

public class RestTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(9000)]
    [InlineData(14_000)]
    public void What_is_at_rest_stays_at_rest_where_vessels_taper_and_stiffness_jumps(double pressure)
    {
        ArterialSimulation simulation = new(new ArterialSetup(
            new(
                [
                    new("aorta", "root", "fork", 0.2, 0.015, 0.008, 0.0015, 0.0009, 400e3, 9000),
                    new("stent", "fork", "behind", 0.04, 0.006, 0.0055, 0.0007, 0.0007, 4e6, 12_000),
                    new("thin", "fork", "end", 0.3, 0.004, 0.001, 0.0005, 0.0003, 700e3, 5000),
                    new("below", "behind", "low", 0.1, 0.005, 0.004, 0.0005, 0.0005, 300e3, 10_000, 2000),
                ],
                new BloodFluid(1060, 0.004, 9)),
            [new("root", new FlowInlet(static _ => 0)), new("end", new Windkessel(1e8, 1e9, 1e-10, pressure, pressure)), new("low", new Resistance(1e9, pressure))],
            pressure)
        {
            CellLength = 0.004,
            Bodies = [new LumenBody(new("aorta", 0.05), 0.08, static _ => 2e-5, false), new LumenBody(new("thin", 0.1), 0.05, static _ => 1e-6, false)],
        });
        simulation.Advance(1.0);
        foreach (ArterialSegment segment in simulation.Network.Segments)
        {
            for (double place = 0; place <= segment.Length; place += 0.01)
            {
                ArterialProbe probe = simulation.Locate(new(segment.Name, place));
                Assert.InRange(Math.Abs(simulation.Velocity(probe)), 0, 1e-12);
                Assert.InRange(Math.Abs(simulation.Pressure(probe) - pressure), 0, 1e-8);
            }
        }
    }
}
