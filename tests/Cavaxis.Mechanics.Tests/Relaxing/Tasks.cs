using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Tests.Walls;
using Cavaxis.Mechanics.Walls;
using CsCheck;

namespace Cavaxis.Mechanics.Tests.Relaxing;

/// <summary>Rods of 20 pieces that a load presses on the wall of a tube with friction.</summary>
internal static class Tasks
{
    public const int Nodes = 22;

    public static PathTube Tube { get; } = new PathTube().Then(40, 0, 6).Then(50, 0.8, 6).Then(100, 0, 6);

    public static Gen<RelaxationTask> Any { get; } =
        from bending in Gen.Double[50, 500]
        from bent in Gen.Double[-0.01, 0.01]
        from load in Rods.RodGen.Vector(0.02)
        from friction in Gen.Double[0, 0.4]
        select Made(bending, bent, load, friction);

    public static RelaxationSettings Exact { get; } = new() { ToleranceN = 1e-9, FrictionToleranceN = 1e-6, MostRounds = 600 };

    /// <summary>
    /// Those that come to the same rest when the load is changed by one part in a thousand million. With friction a rod may have two rests a hair's
    /// breadth apart in its load; which one it takes then hangs on rounding, and no two computations of it need agree.
    /// </summary>
    public static Gen<RelaxationTask> Settled { get; } = Any.Where(HasOneRest);

    public static bool HasOneRest(RelaxationTask task)
    {
        RelaxationResult here = Relaxation.Relax(task, Exact);
        return new[] { 1 + 1e-9, 1 - 1e-9, 1 + 3e-9 }.All(by =>
        {
            RelaxationResult near = Relaxation.Relax(task with { LoadsN = [.. task.LoadsN.Select(load => by * load)] }, Exact);
            return here.IsAtRest && near.IsAtRest && near.State.NodesMm.Zip(here.State.NodesMm).All(static pair => (pair.First - pair.Second).Length < 1e-4);
        });
    }

    public static RelaxationTask Made(double bending, double bent, Vector3D load, double friction)
    {
        RodChain straight = RodChain.Uniform(20, 100, new RodEdge(0, 5000, bending, 0.8 * bending), 0.5).WithClampBefore();
        RodChain chain = new(straight.Edges, straight.RadiiMm, [.. Enumerable.Repeat(new NaturalCurvature(bent, 0.5 * bent), Nodes)]);
        return new RelaxationTask(
            chain, RodState.Along([.. Enumerable.Range(-1, Nodes).Select(i => new Vector3D(5 * i, 0, 0))], new Vector3D(0, 1, 0)), RodSupports.None(Nodes).WithClampedEdge(0))
        {
            LoadsN = [.. Enumerable.Repeat(load, Nodes)],
            Wall = new Wall(Tube, friction),
        };
    }
}
