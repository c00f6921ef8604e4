using System.Globalization;
using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;
using Cavaxis.Arteries.Tests.References;
using Xunit.Abstractions;

namespace Cavaxis.Arteries.Tests.Published;

public class PublishedTreeTests(ITestOutputHelper output)
{
    [Fact]
    public void The_adult_tree_carries_its_mean_pressure_and_shares_its_flow_as_its_resistances_do()
    {
        if (ReferenceData.IsMissing)
        {
            return;
        }

        (string Node, double Proximal, double Distal, double Compliance)[] ends = PublishedTrees.AdultEnds();
        double peripheral = 1 / ends.Sum(static e => 1 / (e.Proximal + e.Distal));

        // Parallel resistance, total compliance and P = Q R without the friction of the vessels: mechanics-and-arteries.md a.3.
        PeriodicWave wave = ReferenceData.Inflow("openbf/adan56_inlet.dat");
        Assert.Equal(1.18913e8, peripheral, 1e3);
        Assert.Equal(13.43e3, wave.Mean * peripheral, 10.0);
        ArterialSimulation simulation = new(new ArterialSetup(
            PublishedTrees.Adult(),
            [new("root", new FlowInlet(wave.At)), .. ends.Select(static e => new EndSpecification(e.Node, new Windkessel(e.Proximal, e.Distal, e.Compliance, 0, 13_430)))],
            13_430)
        { CellLength = 0.01 });
        Dictionary<string, double> resistances = ends.ToDictionary(static e => e.Node, static e => e.Proximal + e.Distal);
        Means means = Means.Of(simulation, 1.0, new("aortic_arch_I", 0), resistances, "femoral_R_II", "internal_carotid_L", "renal_R", "radial_L", "common_iliac_R");
        SteadyTree steady = new(simulation.Network, resistances, 0);
        (double rootPressure, IReadOnlyDictionary<string, double> flows) = steady.Solve("root", wave.Mean);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"root {means.RootPressure / 1000:F4} kPa, steady {rootPressure / 1000:F4}, periodic after {means.Beats} beats"));
        Assert.Equal(13.43e3, means.EndPressure, 13.43e3 * 0.002);
        Assert.Equal(rootPressure, means.RootPressure, 0.01 * rootPressure);
        AssertShares(means, flows, 0.03); // pulses carry pressure of inertia and a mean of 1/A² that the steady tree does not have
        AssertVolumes(simulation);
    }

    [Fact]
    public void Coarse_cells_give_the_waves_of_fine_ones()
    {
        if (ReferenceData.IsMissing)
        {
            return;
        }

        NetworkPlace[] places = [new("aortic_arch_I", 0), new("abdominal_aorta_IV", 0.02), new("femoral_R_II", 0.15), new("radial_L", 0.15)];
        double[][] fine = Waves(0.0025, 2, places), coarse = Waves(0.01, 1, places), middle = Waves(0.005, 1, places);
        for (int p = 0; p < places.Length; p++)
        {
            double high = fine[p].Max(), range = high - fine[p].Min();
            double far = fine[p].Zip(coarse[p], static (a, b) => Math.Abs(a - b)).Max() / range, near = fine[p].Zip(middle[p], static (a, b) => Math.Abs(a - b)).Max() / range;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{places[p].Segment}: largest difference of pressure from 2.5 mm, of the pulse pressure {range / 1000:F2} kPa: 10 mm {100 * far:F2} %, 5 mm {100 * near:F2} %"));
            Assert.InRange(far, 0, 0.02);
        }
    }

    private static double[][] Waves(double cellLength, int fewestCells, NetworkPlace[] places)
    {
        PeriodicWave wave = ReferenceData.Inflow("openbf/adan56_inlet.dat");
        ArterialSimulation simulation = new(new ArterialSetup(
            PublishedTrees.Adult(),
            [new("root", new FlowInlet(wave.At)), .. PublishedTrees.AdultEnds().Select(static e => new EndSpecification(e.Node, new Windkessel(e.Proximal, e.Distal, e.Compliance, 0, 13_430)))],
            13_430)
        { CellLength = cellLength, FewestCells = fewestCells });
        simulation.Advance(8);
        ArterialProbe[] probes = [.. places.Select(simulation.Locate)];
        double[][] waves = [.. places.Select(static _ => new double[200])];
        for (int i = 0; i < 200; i++)
        {
            simulation.Advance(0.005);
            for (int p = 0; p < probes.Length; p++)
            {
                waves[p][i] = simulation.Pressure(probes[p]);
            }
        }

        return waves;
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3000)]
    public void The_silicone_tree_shares_its_flow_as_its_resistances_do(double wallViscosity)
    {
        if (ReferenceData.IsMissing)
        {
            return;
        }

        const double OutPressure = 426; // 3.2 mmHg, Alastruey 2011, from memory
        (string Node, double Resistance)[] ends = PublishedTrees.SiliconeEnds();
        PeriodicWave wave = ReferenceData.Inflow("openbf/invitro_model_inlet.dat");
        double start = OutPressure + (wave.Mean / ends.Sum(static e => 1 / e.Resistance));
        ArterialSimulation simulation = new(new ArterialSetup(
            PublishedTrees.Silicone(wallViscosity),
            [new("n1", new FlowInlet(wave.At)), .. ends.Select(static e => new EndSpecification(e.Node, new Resistance(e.Resistance, OutPressure)))],
            start)
        { CellLength = 0.01 });
        Dictionary<string, double> resistances = ends.ToDictionary(static e => e.Node, static e => e.Resistance);
        Means means = Means.Of(simulation, wave.Period, new("Ascending aorta", 0), resistances, "R carotid", "Thoracic aorta II", "L renal", "R iliac-femoral II", "Splenic");
        SteadyTree steady = new(simulation.Network, resistances, OutPressure);
        (double rootPressure, IReadOnlyDictionary<string, double> flows) = steady.Solve("n1", wave.Mean);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"root {means.RootPressure / 1000:F4} kPa, steady {rootPressure / 1000:F4}, periodic after {means.Beats} beats, highest {means.Highest / 1000:F3}"));
        Assert.Equal(rootPressure, means.RootPressure, 0.02 * rootPressure);
        AssertShares(means, flows, 0.02);
        AssertVolumes(simulation);
    }

    private void AssertShares(Means means, IReadOnlyDictionary<string, double> flows, double part)
    {
        foreach ((string segment, double flow) in means.Flows)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{segment}: {1e6 * flow:F4} mL/s, steady {1e6 * flows[segment]:F4}"));
            Assert.Equal(flows[segment], flow, part * flows[segment]);
        }
    }

    private static void AssertVolumes(ArterialSimulation simulation)
    {
        double through = simulation.VesselVolume + simulation.StoredVolume;
        double before = through - simulation.EnteredVolume;
        simulation.Advance(1);
        Assert.Equal(before, simulation.VesselVolume + simulation.StoredVolume - simulation.EnteredVolume, 1e-10 * through);
    }
}
