using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Solver;

namespace Cavaxis.Arteries.Tests.Published;

/// <summary>Means over one beat of a periodic flow.</summary>
internal sealed record Means(int Beats, double RootPressure, double Highest, double EndPressure, IReadOnlyDictionary<string, double> Flows)
{
    /// <summary>Lets a simulation settle and reads. The pressure at the ends is the mean weighted by their conductances: exactly mean flow times the parallel resistance.</summary>
    public static Means Of(ArterialSimulation simulation, double period, NetworkPlace root, IReadOnlyDictionary<string, double> resistances, params string[] segments)
    {
        const int Points = 400;
        PeriodicFlow settled = PeriodicFlow.Settle(simulation, period, 1e-4, 60);
        Assert.True(settled.IsPeriodic);
        ArterialProbe at = simulation.Locate(root);
        ArterialProbe[] probes = [.. segments.Select(s => simulation.Locate(new(s, 0.5 * simulation.Network.Segments[simulation.Network.SegmentOf(s)].Length)))];
        (ArterialProbe Probe, double Conductance)[] ends = [.. simulation.Network.Segments.Where(s => resistances.ContainsKey(s.DistalNode))
            .Select(s => (simulation.Locate(new(s.Name, s.Length)), 1 / resistances[s.DistalNode]))];
        double pressure = 0, highest = 0, above = 0, below = 0;
        double[] flows = new double[segments.Length];
        for (int i = 0; i < Points; i++)
        {
            simulation.Advance(period / Points);
            pressure += simulation.Pressure(at) / Points;
            highest = Math.Max(highest, simulation.Pressure(at));
            for (int p = 0; p < probes.Length; p++)
            {
                flows[p] += simulation.Flow(probes[p]) / Points;
            }

            foreach ((ArterialProbe end, double conductance) in ends)
            {
                above += conductance * simulation.Pressure(end);
                below += conductance;
            }
        }

        return new Means(settled.Beats, pressure, highest, above / below, segments.Zip(flows).ToDictionary(static s => s.First, static s => s.Second));
    }
}
