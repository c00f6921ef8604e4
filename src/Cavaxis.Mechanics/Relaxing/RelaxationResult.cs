using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>A rod at rest, or as near to it as the solver came.</summary>
/// <param name="State">Where it lies.</param>
/// <param name="Fault">Why it is not at rest; null where it is.</param>
/// <param name="Elastic">Energy in the rod.</param>
/// <param name="WallEnergyNMm">Energy in the penalty and the give of the wall, N mm.</param>
/// <param name="Contacts">Forces of the wall.</param>
/// <param name="Grips">What the wall remembers, for the next task.</param>
/// <param name="HeldForcesN">Force that the supports put on each node, N; zero where nothing is held.</param>
/// <param name="HeldTorquesNMm">Torque about the tangent that the supports put on each edge, N mm.</param>
/// <param name="ResidualN">Largest force left on a node that is not held, N.</param>
/// <param name="PenetrationMm">Largest penetration, mm.</param>
/// <param name="Steps">Newton steps of all rounds.</param>
/// <param name="Rounds">Rounds of renewed contact forces.</param>
/// <param name="Trace">Potential after every step, round by round, where the settings keep it.</param>
public sealed record RelaxationResult(
    RodState State,
    RodFault? Fault,
    ElasticEnergy Elastic,
    double WallEnergyNMm,
    ImmutableArray<NodeContact> Contacts,
    ImmutableArray<NodeGrip> Grips,
    ImmutableArray<Vector3D> HeldForcesN,
    ImmutableArray<double> HeldTorquesNMm,
    double ResidualN,
    double PenetrationMm,
    int Steps,
    int Rounds,
    ImmutableArray<ImmutableArray<double>> Trace)
{
    /// <summary>Whether the rod is at rest within the tolerances.</summary>
    public bool IsAtRest => Fault is null;
}
