using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>
/// All that is inserted, at rest, on one common centreline. Node 0 stands one spacing before the skin, node 1 on it; the
/// others divide the length behind it.
/// </summary>
/// <param name="Depths">Depths of the tips.</param>
/// <param name="RotationRad">Turn at the skin, rad.</param>
/// <param name="ArcsMm">Length along the rod from the skin to each node, mm; empty where nothing is inserted.</param>
/// <param name="Rod">Where it lies; null where nothing is inserted.</param>
/// <param name="Grips">What the wall remembers of each node.</param>
public sealed record InsertedAssembly(
    InsertedDepths Depths, double RotationRad, ImmutableArray<double> ArcsMm, RodState? Rod, ImmutableArray<NodeGrip> Grips)
{
    /// <summary>Nothing is inserted.</summary>
    public static InsertedAssembly Empty { get; } = new(default, 0, [], null, []);

    /// <summary>Place of the centreline at a depth; straight on beyond its ends.</summary>
    /// <param name="depthMm">Length along the rod from the skin, mm.</param>
    /// <returns>mm; not a number where nothing is inserted.</returns>
    public Vector3D PlaceAt(double depthMm)
    {
        if (Rod is null)
        {
            return new Vector3D(double.NaN, double.NaN, double.NaN);
        }

        (int node, double share) = Between(depthMm);
        return Rod.NodesMm[node] + (share * (Rod.NodesMm[node + 1] - Rod.NodesMm[node]));
    }

    /// <summary>The stretch in which a depth lies.</summary>
    /// <param name="depthMm">Length along the rod from the skin, mm.</param>
    /// <returns>Node before it and the share of the stretch behind that; outside 0 to 1 beyond the ends.</returns>
    internal (int Node, double Share) Between(double depthMm)
    {
        int found = ArcsMm.BinarySearch(depthMm);
        int node = Math.Clamp(found >= 0 ? found : ~found - 1, 0, ArcsMm.Length - 2);
        return (node, (depthMm - ArcsMm[node]) / (ArcsMm[node + 1] - ArcsMm[node]));
    }
}
