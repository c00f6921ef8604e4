using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>A rod to be brought to rest.</summary>
/// <param name="Chain">The rod without load.</param>
/// <param name="Start">Where it stands; what is held stays so.</param>
/// <param name="Supports">What is held.</param>
public sealed record RelaxationTask(RodChain Chain, RodState Start, RodSupports Supports)
{
    /// <summary>Dead force on each node, N, such as its weight; empty for none.</summary>
    public ImmutableArray<Vector3D> LoadsN { get; init; } = [];

    /// <summary>The wall; null for free space.</summary>
    public Wall? Wall { get; init; }

    /// <summary>What the wall remembers of each node; empty where the rod meets it for the first time.</summary>
    public ImmutableArray<NodeGrip> Grips { get; init; } = [];

    /// <summary>Coulomb's coefficient of each node; empty for that of the wall.</summary>
    public ImmutableArray<double> Frictions { get; init; } = [];

    /// <summary>Nodes before this one do not touch the wall; those that are held wholly never do.</summary>
    public int FirstTouching { get; init; }
}
