using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>The state after one step of an insertion.</summary>
/// <param name="Step">The step.</param>
/// <param name="Done">How much of it was done, mm or rad; less than asked where there is a fault.</param>
/// <param name="Assembly">All that is inserted, at rest.</param>
/// <param name="CurvaturesPerMm">Curvature at each node, 1/mm.</param>
/// <param name="Contacts">Forces of the wall on the nodes that it touches.</param>
/// <param name="ForceAtSkinN">Force that the sleeve puts on the rod, N; with the forces of the wall it sums to zero.</param>
/// <param name="TorqueAtSkinNMm">Torque that the sleeve puts on the rod about its axis, N mm.</param>
/// <param name="Elastic">Energy in the rod, by kind.</param>
/// <param name="WallEnergyNMm">Energy in the penalty and the give of the wall, N mm.</param>
/// <param name="PenetrationMm">Largest penetration, mm.</param>
/// <param name="NewtonSteps">Newton steps of all increments.</param>
/// <param name="Moments">State after every increment.</param>
/// <param name="Fault">Why the step was not finished; null where it was.</param>
public sealed record InsertionReport(
    InsertionStep Step,
    double Done,
    InsertedAssembly Assembly,
    ImmutableArray<double> CurvaturesPerMm,
    ImmutableArray<NodeContact> Contacts,
    Vector3D ForceAtSkinN,
    double TorqueAtSkinNMm,
    ElasticEnergy Elastic,
    double WallEnergyNMm,
    double PenetrationMm,
    int NewtonSteps,
    ImmutableArray<InsertionMoment> Moments,
    RodFault? Fault)
{
    /// <summary>Whether the step was finished and all is at rest.</summary>
    public bool IsDone => Fault is null;

    /// <summary>Force along the sleeve that the hand puts on all that is inserted, N; negative where it pulls.</summary>
    public double PushN => Moments.IsEmpty ? 0 : Moments[^1].PushN;

    /// <summary>Place of a device's tip.</summary>
    /// <param name="device">Device.</param>
    /// <returns>mm; null where it is not inserted.</returns>
    public Vector3D? TipMm(Device device) =>
        Assembly.Rod is not null && Assembly.Depths.Of(device) > 0 ? Assembly.PlaceAt(Assembly.Depths.Of(device)) : null;

    /// <summary>Force between the wall and the node nearest a device's tip, where the two lie within half a spacing.</summary>
    /// <param name="device">Device.</param>
    /// <returns>N; zero where nothing touches.</returns>
    public double TipForceN(Device device)
    {
        double depth = Assembly.Depths.Of(device);
        if (Assembly.Rod is null || depth <= 0)
        {
            return 0;
        }

        (int node, double share) = Assembly.Between(depth);
        int nearest = share > 0.5 ? node + 1 : node;
        return Contacts.Where(c => c.Node == nearest).Sum(static c => c.OnRodN.Length);
    }
}
