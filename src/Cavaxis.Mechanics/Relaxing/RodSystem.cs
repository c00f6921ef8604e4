using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>Potential of a rod with its loads and its wall, and its derivatives, in arrays that are used again.</summary>
internal sealed class RodSystem
{
    private const double NoticeableShare = 1e-10;

    private ImmutableArray<Vector3D> loads = [];
    private bool[] touches = [];

    /// <summary>Energy of the rod.</summary>
    public RodElasticity Elasticity { get; } = new();

    /// <summary>Energy of the wall.</summary>
    public WallPotential Wall { get; } = new();

    /// <summary>Second derivatives.</summary>
    public BandMatrix Hessian { get; } = new();

    /// <summary>First derivatives with what the supports must hold.</summary>
    public double[] Gradient { get; private set; } = [];

    /// <summary>What is held.</summary>
    public bool[] Held { get; private set; } = [];

    /// <summary>Whether what is held are the first nodes alone.</summary>
    public bool EndIsFree { get; private set; }

    /// <summary>Variables: three coordinates and an angle for each node, the last angle held.</summary>
    public int Size { get; private set; }

    /// <summary>Smallest curvature of the potential that is told from none, N/mm: a free rotation has none.</summary>
    public double NoticeableCurvature => NoticeableShare * Elasticity.LeastBendNMm / (Elasticity.MeanLengthMm * Elasticity.MeanLengthMm);

    /// <summary>The same for angles, N mm.</summary>
    public double NoticeableAngleCurvature => NoticeableShare * Elasticity.LeastBendNMm;

    /// <summary>Takes a task.</summary>
    /// <exception cref="InputFaultException">Lists of unequal length.</exception>
    public void Load(RelaxationTask task, RodPose pose, RelaxationSettings settings)
    {
        int nodes = task.Chain.NodeCount;
        Check(task.Start.NodesMm.Length, nodes, "task.start");
        Check(task.Supports.Held.Length, 4 * nodes, "task.supports");
        Check(task.LoadsN.IsEmpty ? nodes : task.LoadsN.Length, nodes, "task.loadsN");
        Check(task.Grips.IsEmpty ? nodes : task.Grips.Length, nodes, "task.grips");
        Check(task.Frictions.IsEmpty ? nodes : task.Frictions.Length, nodes, "task.frictions");
        Size = 4 * nodes;
        if (Gradient.Length < Size)
        {
            Gradient = new double[Size + 128];
            Held = new bool[Size + 128];
            touches = new bool[nodes + 32];
        }

        pose.Load(task.Start);
        loads = task.LoadsN;
        task.Supports.Held.CopyTo(Held);
        Held[Size - 1] = true;
        for (int i = 0; i < nodes; i++)
        {
            touches[i] = i >= task.FirstTouching && !(Held[4 * i] && Held[(4 * i) + 1] && Held[(4 * i) + 2]);
        }

        EndIsFree = true;
        for (int i = 1; i < nodes; i++)
        {
            for (int c = 0; c < 3; c++)
            {
                EndIsFree &= !Held[(4 * i) + c] || (Held[(4 * i) - 4] && Held[(4 * i) - 3] && Held[(4 * i) - 2]);
            }
        }

        Elasticity.Load(task.Chain);
        Wall.Load(task.Wall, task.Chain.RadiiMm, touches.AsSpan(0, nodes), task.Grips, task.Frictions, pose, settings.WallStiffnessNPerMm, settings.FrictionGiveMm);
    }

    /// <summary>Potential of a pose, N mm.</summary>
    public double Potential(RodPose pose)
    {
        double sum = Elasticity.Energy(pose).TotalNMm + Wall.Energy(pose);
        for (int i = 0; i < loads.Length; i++)
        {
            sum -= loads[i].Dot(pose.Nodes[i]);
        }

        return sum;
    }

    /// <summary>Derivatives of a pose; rows of held variables are taken out of the matrix, not of the gradient.</summary>
    /// <returns>Largest force left on what is free, N.</returns>
    public double Differentiate(RodPose pose)
    {
        Array.Clear(Gradient, 0, Size);
        Hessian.Reset(Size);
        Elasticity.AddDerivatives(pose, Gradient, Hessian);
        Wall.AddDerivatives(pose, Gradient, Hessian);
        for (int i = 0; i < loads.Length; i++)
        {
            Gradient[4 * i] -= loads[i].X;
            Gradient[(4 * i) + 1] -= loads[i].Y;
            Gradient[(4 * i) + 2] -= loads[i].Z;
        }

        double residual = 0;
        double arm = 1 / Elasticity.MeanLengthMm;
        for (int k = 0; k < Size; k++)
        {
            if (Held[k])
            {
                Hessian.Fix(k);
                continue;
            }

            double force = Math.Abs(Gradient[k]) * ((k & 3) == 3 ? arm : 1);
            residual = force > residual || double.IsNaN(force) ? force : residual;
        }

        return residual;
    }

    private static void Check(int length, int wanted, string field) =>
        Require.InRange(length, wanted, wanted, field, "Give as many entries as the rod has nodes.");
}
