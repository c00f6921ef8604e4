using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Arteries.Network;

/// <summary>Segments joined at nodes of the same name: connected, a tree or with loops.</summary>
public sealed class ArterialNetwork
{
    private readonly Dictionary<string, int> segmentIndex = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> nodeIndex = new(StringComparer.Ordinal);

    /// <summary>A network.</summary>
    /// <param name="segments">At least one segment; the order is kept.</param>
    /// <param name="fluid">The blood.</param>
    /// <exception cref="InputFaultException">No segment, a name used twice, a segment from a node to itself, or parts that hang together with nothing.</exception>
    public ArterialNetwork(IReadOnlyList<ArterialSegment> segments, BloodFluid fluid)
    {
        ArgumentNullException.ThrowIfNull(segments);
        ArgumentNullException.ThrowIfNull(fluid);
        if (segments.Count == 0)
        {
            throw Fault(FaultCode.WrongLength, "segments", "0", "at least one segment", "Add the vessels.");
        }

        Segments = [.. segments];
        Fluid = fluid;
        List<string> nodes = [];
        for (int i = 0; i < Segments.Count; i++)
        {
            ArterialSegment segment = Segments[i];
            if (!segmentIndex.TryAdd(segment.Name, i))
            {
                throw Fault(FaultCode.DuplicateField, "segments.name", segment.Name, "a name used once", "Name each segment differently.");
            }

            if (segment.ProximalNode == segment.DistalNode)
            {
                throw Fault(FaultCode.Contradiction, $"{segment.Name}.distalNode", segment.DistalNode, "another node than the proximal one", "Split a loop into two segments.");
            }

            foreach (string node in (string[])[segment.ProximalNode, segment.DistalNode])
            {
                if (nodeIndex.TryAdd(node, nodes.Count))
                {
                    nodes.Add(node);
                }
            }
        }

        Nodes = nodes;
        Branches = [.. nodes.Select(node => (IReadOnlyList<SegmentEnd>)
            [.. Segments.SelectMany((s, i) => Ends(s, i, node))])];
        RequireConnected();
    }

    /// <summary>The segments in the order given.</summary>
    public IReadOnlyList<ArterialSegment> Segments { get; }

    /// <summary>The fluid.</summary>
    public BloodFluid Fluid { get; }

    /// <summary>Names of the nodes in the order in which the segments first name them.</summary>
    public IReadOnlyList<string> Nodes { get; }

    /// <summary>For each node the ends of segments that meet there.</summary>
    public IReadOnlyList<IReadOnlyList<SegmentEnd>> Branches { get; }

    /// <summary>Names of the nodes at which one segment ends: each needs a condition there.</summary>
    public IEnumerable<string> OpenNodes => Nodes.Where((_, i) => Branches[i].Count == 1);

    /// <summary>Index of a segment.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Index in <see cref="Segments"/>.</returns>
    /// <exception cref="InputFaultException">There is none of that name.</exception>
    public int SegmentOf(string name) => segmentIndex.TryGetValue(name, out int index)
        ? index
        : throw Fault(FaultCode.NotFound, "segment", name, "a segment of the network", Nearest(name, segmentIndex.Keys));

    /// <summary>Index of a node.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>Index in <see cref="Nodes"/>.</returns>
    /// <exception cref="InputFaultException">There is none of that name.</exception>
    public int NodeOf(string name) => nodeIndex.TryGetValue(name, out int index)
        ? index
        : throw Fault(FaultCode.NotFound, "node", name, "a node of the network", Nearest(name, nodeIndex.Keys));

    /// <summary>Checks that a place lies in the network.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Index of its segment.</returns>
    /// <exception cref="InputFaultException">No such segment, or beyond its ends.</exception>
    public int Locate(NetworkPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        int segment = SegmentOf(place.Segment);
        Require.InRange(place.Distance, 0, Segments[segment].Length, $"{place.Segment}.distance (m)", "Measure from the proximal end.");
        return segment;
    }

    private static IEnumerable<SegmentEnd> Ends(ArterialSegment segment, int index, string node)
    {
        if (segment.ProximalNode == node)
        {
            yield return new SegmentEnd(index, false);
        }

        if (segment.DistalNode == node)
        {
            yield return new SegmentEnd(index, true);
        }
    }

    private void RequireConnected()
    {
        bool[] reached = new bool[Nodes.Count];
        Stack<int> waiting = new([0]);
        reached[0] = true;
        while (waiting.TryPop(out int node))
        {
            foreach (SegmentEnd end in Branches[node])
            {
                ArterialSegment segment = Segments[end.Segment];
                int other = NodeOf(end.IsDistal ? segment.ProximalNode : segment.DistalNode);
                if (!reached[other])
                {
                    reached[other] = true;
                    waiting.Push(other);
                }
            }
        }

        int lost = Array.IndexOf(reached, false);
        if (lost >= 0)
        {
            throw Fault(
                FaultCode.Contradiction, "segments", Nodes[lost], string.Create(CultureInfo.InvariantCulture, $"every node joined to {Nodes[0]}"), "Join the parts, or make two networks.");
        }
    }

    private static string Nearest(string name, IEnumerable<string> known) =>
        $"The nearest name is {known.MinBy(k => EditDistance.Between(k, name))}.";

    private static InputFaultException Fault(FaultCode code, string field, string value, string accepted, string remedy) =>
        new(new InputFault(code, field, InputFault.Shown(value), accepted, remedy));
}
