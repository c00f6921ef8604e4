using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>Gathers the states of one step.</summary>
internal sealed class InsertionLog
{
    private readonly InsertionStep step;
    private readonly Sleeve sleeve;
    private readonly ImmutableArray<InsertionMoment>.Builder moments = ImmutableArray.CreateBuilder<InsertionMoment>();
    private RelaxationResult? last;
    private int newtonSteps;

    /// <summary>Begins.</summary>
    public InsertionLog(InsertionStep step, Sleeve sleeve, InsertedAssembly from) => (this.step, this.sleeve, Assembly) = (step, sleeve, from);

    /// <summary>Last state of rest.</summary>
    public InsertedAssembly Assembly { get; private set; }

    /// <summary>Counts the solver's work, whether it came to rest or not.</summary>
    public void Count(int steps) => newtonSteps += steps;

    /// <summary>Keeps a state in which nothing reaches into the body.</summary>
    public void Keep(InsertedDepths depths, double rotationRad)
    {
        last = null;
        Assembly = InsertedAssembly.Empty with { Depths = depths, RotationRad = rotationRad };
        moments.Add(new InsertionMoment(Assembly, sleeve.PointMm, 0, 0, 0, 0, 0));
    }

    /// <summary>Keeps a state of rest.</summary>
    public void Keep(InsertedDepths depths, double rotationRad, ImmutableArray<double> arcs, RelaxationResult result)
    {
        last = result;
        Assembly = new InsertedAssembly(depths, rotationRad, arcs, result.State, result.Grips);
        int tip = result.State.NodesMm.Length - 1;
        moments.Add(new InsertionMoment(
            Assembly,
            result.State.NodesMm[tip],
            AtSkin(result).Dot(sleeve.Direction),
            result.Contacts.Where(c => c.Node == tip).Sum(static c => c.OnRodN.Length),
            result.Contacts.IsEmpty ? 0 : result.Contacts.Max(static c => c.OnRodN.Length),
            result.Elastic.TotalNMm,
            result.PenetrationMm));
    }

    /// <summary>The report.</summary>
    public InsertionReport Report(double done, RodFault? fault) => new(
        step,
        done,
        Assembly,
        last is null ? [] : [.. Enumerable.Range(0, Assembly.ArcsMm.Length).Select(Curvature)],
        last?.Contacts ?? [],
        last is null ? default : AtSkin(last),
        last is null ? 0 : last.HeldTorquesNMm[0],
        last?.Elastic ?? default,
        last?.WallEnergyNMm ?? 0,
        last?.PenetrationMm ?? 0,
        newtonSteps,
        moments.ToImmutable(),
        fault);

    private static Vector3D AtSkin(RelaxationResult result) => result.HeldForcesN[0] + result.HeldForcesN[1];

    private double Curvature(int node)
    {
        ImmutableArray<double> arcs = Assembly.ArcsMm;
        if (node == 0 || node == arcs.Length - 1)
        {
            return 0;
        }

        double length = node == 1 ? 0.5 * (arcs[2] - arcs[1]) : 0.5 * (arcs[node + 1] - arcs[node - 1]);
        return 2 * Math.Tan(0.5 * Assembly.Rod!.TurningRad(node)) / length;
    }
}
