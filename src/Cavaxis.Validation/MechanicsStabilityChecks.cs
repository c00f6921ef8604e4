using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Loads and twists at which straight rods give way: where the second derivatives of the potential get their first negative mode.</summary>
public sealed class MechanicsStabilityChecks : IReferenceChecks
{
    private const int Pieces = 100;

    private static readonly Source Euler = new("Euler column, pi^2 EI/(KL)^2 (Timoshenko)", Certainty.FromMemory);
    private static readonly RelaxationSettings Straight = new() { LeavesSaddles = false };

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        double pi2 = Math.PI * Math.PI;
        yield return Row("Buckling load PL²/EI, both ends pinned", pi2, Column(false, false));
        yield return Row("Buckling load PL²/EI, one end clamped, one free", pi2 / 4, Column(true, null));
        yield return Row("Buckling load PL²/EI, both ends clamped", 4 * pi2, Column(true, true));
        yield return Row("Buckling load PL²/EI, one end clamped, one pinned", pi2 / (0.6992 * 0.6992), Column(true, false));
        yield return MechanicsRodChecks.Row(
            "Torque ML/EI at which a straight rod with clamped ends leaves its line", new Source("Timoshenko and Gere", Certainty.FromMemory), 8.987, Torque(), "1",
            Tolerance.Relative, 0.02);
    }

    private static ValidationRow Row(string check, double expected, double got) =>
        MechanicsRodChecks.Row(check, Euler, expected, got, "1", Tolerance.Relative, 0.005);

    /// <summary>The first end at the origin; the load presses on the second, which may move along the axis.</summary>
    /// <param name="clampedFirst">Whether the first end is clamped, else pinned.</param>
    /// <param name="clampedSecond">Whether the second is; null for a free end.</param>
    private static double Column(bool clampedFirst, bool? clampedSecond)
    {
        int before = clampedFirst ? 1 : 0;
        int after = clampedSecond == true ? 1 : 0;
        RodChain chain = RodChain.Uniform(Pieces, ReferenceRod.LengthMm, ReferenceRod.Edge, 0);
        chain = clampedFirst ? chain.WithClampBefore() : chain;
        chain = after > 0 ? chain.WithClampAfter() : chain;
        int last = chain.NodeCount - 1;
        RodSupports supports = RodSupports.None(chain.NodeCount).WithNode(0).WithAngle(0);
        supports = clampedFirst ? supports.WithNode(1) : supports;
        supports = clampedSecond is null ? supports : supports.WithNode(last, false, true, true).WithNode(last - after, false, true, true);
        supports = after > 0 ? supports.WithAngle(last - 1) : supports;
        RodState start = RodState.Along(ReferenceRod.Straight(Pieces, before, after));
        return ReferenceRod.Critical(
            load =>
            {
                RelaxationTask task = new(chain, start, supports) { LoadsN = [.. new Vector3D[last], new Vector3D(-load * ReferenceRod.UnitN, 0, 0)] };
                return Relaxation.UnstableModes(task with { Start = Relaxation.Relax(task, Straight).State }) > 0;
            },
            1,
            60);
    }

    private static double Torque()
    {
        RodChain chain = RodChain.Uniform(Pieces, ReferenceRod.LengthMm, ReferenceRod.Edge, 0).WithClampBefore().WithClampAfter();
        RodSupports supports = RodSupports.None(chain.NodeCount).WithClampedEdge(0).WithClampedEdge(chain.NodeCount - 2);
        RodState start = RodState.Along(ReferenceRod.Straight(Pieces, 1, 1));
        return ReferenceRod.Critical(
            twist =>
            {
                // Twist is even: half a piece of it lies between a clamp and the middle of the piece beside it.
                RodState twisted = start with { AnglesRad = [.. Enumerable.Range(0, Pieces + 2).Select(j => twist * Math.Clamp((j - 0.5) / Pieces, 0, 1))] };
                return Relaxation.UnstableModes(new RelaxationTask(chain, twisted, supports)) > 0;
            },
            1,
            20);
    }
}
