using Cavaxis.Arteries.Network;

namespace Cavaxis.Arteries.Tests.Published;

/// <summary>
/// The steady flow in a tree of tubes by hand: in each tube dP = −2 (ζ+2) π μ Q dx/A², A by the tube law at the pressure there, behind each end a resistance. Pressure of inertia is left
/// out. Found by repeating: resistances from areas, flows from resistances, pressures from flows.
/// </summary>
internal sealed class SteadyTree(ArterialNetwork network, IReadOnlyDictionary<string, double> ends, double outPressure)
{
    private readonly Dictionary<string, double> pressures = [];
    private readonly Dictionary<string, double> flows = [];
    private readonly Dictionary<string, double> resistances = [];

    /// <summary>Pressure at the root and flow in each segment.</summary>
    public (double RootPressure, IReadOnlyDictionary<string, double> Flows) Solve(string root, double flow)
    {
        foreach (string node in network.Nodes)
        {
            pressures[node] = 12_000;
        }

        for (int i = 0; i < 60; i++)
        {
            foreach (ArterialSegment segment in network.Segments)
            {
                resistances[segment.Name] = Friction(segment);
            }

            Share(root, flow, outPressure + (flow * Below(root)));
        }

        return (pressures[root], flows);
    }

    private IEnumerable<ArterialSegment> From(string node) => network.Segments.Where(s => s.ProximalNode == node);

    private double Below(string node) => ends.TryGetValue(node, out double end)
        ? end
        : 1 / From(node).Sum(s => 1 / (resistances[s.Name] + Below(s.DistalNode)));

    private void Share(string node, double flow, double pressure)
    {
        pressures[node] = pressure;
        double conductance = From(node).Sum(s => 1 / (resistances[s.Name] + Below(s.DistalNode)));
        foreach (ArterialSegment segment in From(node))
        {
            double part = flow / (resistances[segment.Name] + Below(segment.DistalNode)) / conductance;
            flows[segment.Name] = part;
            Share(segment.DistalNode, part, pressure - (part * resistances[segment.Name]));
        }
    }

    private double Friction(ArterialSegment segment)
    {
        const int Pieces = 100;
        double sum = 0;
        for (int i = 0; i < Pieces; i++)
        {
            double x = (i + 0.5) / Pieces;
            double pressure = pressures[segment.ProximalNode] + (x * (pressures[segment.DistalNode] - pressures[segment.ProximalNode]));
            double root = (Math.Sqrt(Math.PI) * segment.Radius(x)) + ((pressure - segment.ReferencePressure) / segment.Stiffness(x));
            sum += segment.Length / Pieces / Math.Pow(root, 4);
        }

        return 2 * (network.Fluid.ProfileExponent + 2) * Math.PI * network.Fluid.Viscosity * sum;
    }
}
