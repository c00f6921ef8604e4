using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Tests.Transport;

/// <summary>An invented tree in which everything occurs: a heart that beats against a pump in the leg, a body in the lumen, a side tube, a swelling balloon, viscous walls, stores and resistances.</summary>
internal static class SmallTree
{
    public const double Period = 0.8;

    public static ArterialSimulation Simulation(double heart, double pump) => new(Setup(heart, pump));

    public static ArterialSetup Setup(double heart, double pump) => new(
        new ArterialNetwork(
            [
                new("ascending", "root", "arch", 0.06, 0.014, 0.013, 0.0016, 0.0015, 400e3, 10_000),
                new("arm", "arch", "hand", 0.4, 0.0045, 0.0025, 0.0007, 0.0005, 600e3, 10_000),
                new("descending", "arch", "fork", 0.35, 0.012, 0.008, 0.0014, 0.001, 450e3, 10_000),
                new("right", "fork", "rightGroin", 0.2, 0.005, 0.004, 0.0007, 0.0006, 700e3, 10_000, 500),
                new("leg", "rightGroin", "leg", 0.4, 0.004, 0.0025, 0.0006, 0.0004, 800e3, 10_000),
                new("left", "fork", "leftLeg", 0.6, 0.005, 0.003, 0.0007, 0.0005, 700e3, 10_000),
            ],
            new BloodFluid(1055, 0.0035, 9)),
        [
            new("root", new FlowInlet(static t => 2.2e-4 * Math.Max(0, Math.Sin(2 * Math.PI * t / Period)) * Math.Min(1, t)), new ConstantBlood(heart, heart)),
            new("hand", new Windkessel(2e8, 2e9, 4e-10, 500, 10_000)),
            new("leg", new Windkessel(2e8, 2e9, 4e-10, 500, 10_000)),
            new("leftLeg", new Resistance(9e8, 500)),
        ],
        10_000)
    {
        CellLength = 0.01,
        InitialTracers = [heart, heart],
        SideFlows =
        [
            new PointSource(new("right", 0.12), static t => 4e-5 * Math.Min(1, t), new ConstantBlood(pump, pump), -2e-5),
            new LinearTube(new("right", 0.05), new("leg", 0.05), 3e8, 2e7, 5e-6),
        ],
        Bodies =
        [
            new LumenBody(new("right", 0.12), 0.08, static _ => 1.5e-5, false, 0.5),
            new LumenBody(new("descending", 0.05), 0.15, static t => 4e-5 * Math.Pow(Math.Sin(Math.PI * t / Period), 2), true),
        ],
    };

    public static ArterialProbe[] Probes(ArterialSimulation simulation) =>
        [.. simulation.Network.Segments.SelectMany(s => Enumerable.Range(0, 8).Select(i => simulation.Locate(new(s.Name, s.Length * (i + 0.5) / 8))))];
}
