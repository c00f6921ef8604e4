using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Cavaxis.Arteries.Tests.References;

namespace Cavaxis.Arteries.Tests.Published;

/// <summary>The cases 2 to 4 of the benchmark set of 2015 (doi 10.1002/cnm.2732); numbers and their grades in mechanics-and-arteries.md, a.2.</summary>
internal sealed record PublishedCase(ArterialNetwork Network, string Inflow, double Pressure, double Period, double[] Windkessel, int Beats)
{
    public static PublishedCase Carotid { get; } = new(
        new([new("carotid", "in", "out", 0.126, 0.003, 0.003, 0.0003, 0.0003, 700e3, 10933)], new(1060, 0.004, 2)),
        "openbf/cca_inlet.dat", 10933, 1.1, [2.4875e8, 1.8697e9, 1.7529e-10], 15);

    public static PublishedCase ThoracicAorta { get; } = new(
        new([new("aorta", "in", "out", 0.24137, 0.012, 0.012, 0.0012, 0.0012, 400e3, 9466.7)], new(1060, 0.004, 9)),
        "openbf/uta_inlet.dat", 9466.7, 0.955, [1.1752e7, 1.1167e8, 1.0163e-8], 18);

    public static PublishedCase Bifurcation { get; } = new(
        new(
            [
                new("aorta", "in", "fork", 0.086, 0.0086, 0.0086, 0.001032, 0.001032, 500e3, 9466.7),
                new("right", "fork", "outRight", 0.085, 0.006, 0.006, 0.00072, 0.00072, 700e3, 9466.7),
                new("left", "fork", "outLeft", 0.085, 0.006, 0.006, 0.00072, 0.00072, 700e3, 9466.7),
            ],
            new(1060, 0.004, 9)),
        "openbf/ibif_inlet.dat", 9466.7, 1.1, [6.8123e7, 3.1013e9, 3.6664e-10], 25);

    /// <summary>Runs to the periodic state, then reads pressure (kPa) and flow (mL/s) at places each millisecond over one beat.</summary>
    public (double[] Pressure, double[] Flow)[] Curves(double cellLength, params NetworkPlace[] places)
    {
        ArterialSimulation simulation = Simulation(cellLength);
        simulation.Advance(Beats * Period);
        ArterialProbe[] probes = [.. places.Select(simulation.Locate)];
        int points = (int)Math.Round(1000 * Period);
        (double[] Pressure, double[] Flow)[] curves = [.. places.Select(_ => (new double[points], new double[points]))];
        for (int i = 0; i < points; i++)
        {
            for (int p = 0; p < probes.Length; p++)
            {
                curves[p].Pressure[i] = simulation.Pressure(probes[p]) / 1000;
                curves[p].Flow[i] = simulation.Flow(probes[p]) * 1e6;
            }

            simulation.Advance(Period / points);
        }

        return curves;
    }

    public ArterialSimulation Simulation(double cellLength) => new(new ArterialSetup(
        Network,
        [new("in", new FlowInlet(ReferenceData.Inflow(Inflow).At)), .. Network.OpenNodes.Where(static n => n != "in").Select(End)],
        Pressure)
    { CellLength = cellLength });

    private EndSpecification End(string node) => new(node, new Windkessel(Windkessel[0], Windkessel[1], Windkessel[2], 0, Pressure));
}
