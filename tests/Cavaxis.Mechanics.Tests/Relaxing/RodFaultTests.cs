using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Tests.Relaxing;

/// <summary>Every reason for which a rod is not brought to rest, each brought about.</summary>
public class RodFaultTests
{
    private static readonly RelaxationTask Pressed = Tasks.Made(100, 0, new Vector3D(0, 0, -0.02), 0.3);

    [Fact]
    public void A_wall_that_is_not_a_number_is_named() =>
        Expect(RodFaultCause.NotFinite, Pressed with { Wall = new Wall(new Broken(static (_, at) => at with { DistanceMm = double.NaN }), 0.1) });

    [Fact]
    public void Too_few_steps_are_named() => Expect(RodFaultCause.TooManySteps, Pressed, new RelaxationSettings { MostSteps = 1 });

    [Fact]
    public void A_distance_whose_gradient_is_wrong_is_named() => Expect(
        RodFaultCause.NoDescent,
        Pressed with { Wall = new Wall(new Broken(static (x, at) => at with { Outward = (at.Outward + new Vector3D(0.4 * Math.Sin(x.X), 0.3, 0)).Unit }), 0) });

    [Fact]
    public void Stiffness_beyond_all_proportion_is_named()
    {
        RodChain chain = RodChain.Uniform(4, 40, new RodEdge(0, 1e11, 1e-9, 1e-9), 0);
        Expect(
            RodFaultCause.NoDirection,
            new RelaxationTask(chain, RodState.Along([.. Enumerable.Range(0, 5).Select(static i => new Vector3D(7 * i, i % 2, 0))]), RodSupports.None(5).WithNode(0).WithNode(4)));
    }

    [Fact]
    public void A_rod_that_does_not_fit_is_named()
    {
        RodFault fault = Expect(RodFaultCause.WallNotHeld, Pressed with { Chain = Wide(Pressed.Chain, 9) }, new RelaxationSettings { MostRounds = 5 });
        Assert.True(fault.PenetrationMm > 0.05);
    }

    [Fact]
    public void Friction_that_has_not_settled_is_named() => Expect(RodFaultCause.FrictionNotSettled, Pressed, new RelaxationSettings { MostRounds = 1, PenetrationMm = 5 });

    [Fact]
    public void What_was_reached_is_told_with_the_fault()
    {
        RelaxationResult rest = Relaxation.Relax(Pressed, new RelaxationSettings { MostSteps = 2 });
        Assert.Equal(2, rest.Steps);
        Assert.True(rest.ResidualN > 1e-7 && rest.Fault!.ResidualN > 0 && rest.State.NodesMm.Length == Tasks.Nodes);
    }

    [Fact]
    public void Lists_of_unequal_length_are_refused()
    {
        Assert.Throws<InputFaultException>(static () => Relaxation.Relax(Pressed with { LoadsN = [default] }));
        Assert.Throws<InputFaultException>(static () => Relaxation.Relax(Pressed with { Supports = RodSupports.None(3) }));
        Assert.Throws<InputFaultException>(static () => Relaxation.Relax(Pressed with { Grips = [default] }));
        Assert.Throws<InputFaultException>(static () => Relaxation.Relax(Pressed with { Frictions = [0.1] }));
        Assert.Throws<InputFaultException>(static () => new RodChain([new RodEdge(1, 1, 1, 1)], [1, 1], []));
        Assert.Throws<InputFaultException>(static () => RodState.Along([default, default, default]));
        Assert.Throws<InputFaultException>(static () => new Wall(Tasks.Tube, double.NaN));
    }

    private static RodFault Expect(RodFaultCause cause, RelaxationTask task, RelaxationSettings? settings = null)
    {
        RelaxationResult rest = Relaxation.Relax(task, settings);
        Assert.Equal(cause, rest.Fault?.Cause);
        Assert.True(rest.Fault!.Words.Length > 20 && !rest.IsAtRest);
        return rest.Fault;
    }

    private static RodChain Wide(RodChain chain, double radius) => new(chain.Edges, [.. chain.RadiiMm.Select(_ => radius)], chain.Natural);

    private sealed record Broken(Func<Vector3D, LumenPoint, LumenPoint> Change) : ILumen
    {
        public LumenPoint At(Vector3D point) => Change(point, Tasks.Tube.At(point));
    }
}
