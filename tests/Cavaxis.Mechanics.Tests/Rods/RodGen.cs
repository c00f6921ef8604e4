using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Rods;
using CsCheck;

namespace Cavaxis.Mechanics.Tests.Rods;

/// <summary>Random rods for properties.</summary>
internal static class RodGen
{
    public static Gen<Vector3D> Vector(double size) =>
        Gen.Select(Gen.Double[-size, size], Gen.Double[-size, size], Gen.Double[-size, size], static (x, y, z) => new Vector3D(x, y, z));

    /// <summary>A rod of six edges of unequal stiffness and curvature, far from rest and twisted.</summary>
    public static Gen<(RodChain Chain, RodState State)> Bent { get; } =
        from edges in Gen.Select(
            Gen.Double[0.5, 2], Gen.Double[50, 200], Gen.Double[0.5, 3], Gen.Double[0.5, 3], static (l, ea, ei, gj) => new RodEdge(l, ea, ei, gj)).Array[6]
        from natural in Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.3, 0.3], static (a, b) => new NaturalCurvature(a, b)).Array[7]
        from shake in Vector(0.35).Array[7]
        from angles in Gen.Double[-0.8, 0.8].Array[6]
        select Made(edges, natural, shake, angles);

    private static (RodChain Chain, RodState State) Made(RodEdge[] edges, NaturalCurvature[] natural, Vector3D[] shake, double[] angles)
    {
        Vector3D[] nodes = new Vector3D[7];
        for (int i = 0; i < 7; i++)
        {
            nodes[i] = (i == 0 ? default : nodes[i - 1] + new Vector3D(edges[i - 1].RestLengthMm, 0, 0)) + (i == 0 ? 1 : edges[i - 1].RestLengthMm) * shake[i];
        }

        RodState state = RodState.Along(nodes);
        return (new RodChain([.. edges], [.. new double[7]], [.. natural]), state with { AnglesRad = [.. angles] });
    }
}
