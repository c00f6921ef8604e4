using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>The state after one increment.</summary>
/// <param name="Assembly">All that is inserted, at rest.</param>
/// <param name="TipMm">Place of the deepest tip, mm.</param>
/// <param name="PushN">Force along the sleeve that the hand puts on all that is inserted, N; negative where it pulls.</param>
/// <param name="TipForceN">Force between the deepest tip and the wall, N.</param>
/// <param name="LargestContactN">Largest force between one node and the wall, N.</param>
/// <param name="EnergyNMm">Elastic energy, N mm.</param>
/// <param name="PenetrationMm">Largest depth of a node's outer surface in the wall, mm.</param>
public readonly record struct InsertionMoment(
    InsertedAssembly Assembly, Vector3D TipMm, double PushN, double TipForceN, double LargestContactN, double EnergyNMm, double PenetrationMm)
{
    /// <summary>Depths of the tips.</summary>
    public InsertedDepths Depths => Assembly.Depths;
}
