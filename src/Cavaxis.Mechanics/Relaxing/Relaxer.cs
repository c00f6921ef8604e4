using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Rods;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>
/// Newton's method on the potential. Each direction comes from second derivatives made positive definite by the smallest
/// shift that does (so it descends), each step is halved until the potential falls (Armijo). Around it, rounds renew the
/// contact forces that friction and multipliers hold. Not for two threads at once.
/// </summary>
internal sealed class Relaxer
{
    private const double ArmijoShare = 1e-4;
    private const int MostHalvings = 45;

    /// <summary>Halvings after which a step that looks ahead is seen to have looked wrong: a short step of it leads nowhere.</summary>
    private const int Patience = 2;

    /// <summary>Rounds after which friction that swings from round to round is led half the way to its new force.</summary>
    private const int SwingingRounds = 8;
    private const int MostEscapes = 20;

    /// <summary>Rounding of the potential, of its size.</summary>
    private const double Rounding = 2e-13;

    private readonly RodSystem system = new();
    private readonly DescentDirection direction;
    private RodPose pose = new();
    private RodPose trial = new();
    private double residual;
    private int steps;
    private int escapes;
    private List<double>? trace;

    /// <summary>Makes ready.</summary>
    public Relaxer() => direction = new DescentDirection(system);

    /// <summary>Brings a rod to rest.</summary>
    public RelaxationResult Relax(RelaxationTask task, RelaxationSettings settings)
    {
        system.Load(task, pose, settings);
        direction.Begin();
        (steps, escapes) = (0, 0);
        ImmutableArray<ImmutableArray<double>>.Builder traces = ImmutableArray.CreateBuilder<ImmutableArray<double>>();
        RodFault? fault = null;
        double depth = 0;
        int round = 0;
        bool settled = false;
        while (fault is null && !settled)
        {
            round++;
            trace = settings.KeepsTrace ? [] : null;
            RodFaultCause? cause = Descend(settings);
            if (trace is not null)
            {
                traces.Add([.. trace]);
            }

            if (cause is RodFaultCause known)
            {
                // Pressed on both sides a node finds no way that is down; the wall is then the reason.
                depth = system.Wall.Depth(pose);
                bool pressed = known == RodFaultCause.NoDescent && system.Wall.IsPinched(pose);
                fault = Fault(pressed ? RodFaultCause.WallNotHeld : known, depth);
            }
            else if (!system.Wall.Exists)
            {
                settled = true;
            }
            else
            {
                (depth, double change) = system.Wall.Renew(pose, settings.PenetrationMm, round < SwingingRounds ? 1 : 0.5);
                settled = depth <= settings.PenetrationMm && change <= settings.FrictionToleranceN;
                fault = settled || round < settings.MostRounds ? null
                    : Fault(depth > settings.PenetrationMm ? RodFaultCause.WallNotHeld : RodFaultCause.FrictionNotSettled, depth);
            }
        }

        residual = system.Differentiate(pose);
        return Result(fault, depth, round, traces.ToImmutable());
    }

    private RodFaultCause? Descend(RelaxationSettings settings)
    {
        double potential = system.Potential(pose);
        trace?.Add(potential);
        for (int step = 0; ; step++)
        {
            residual = system.Differentiate(pose);
            if (!double.IsFinite(residual) || !double.IsFinite(potential))
            {
                return RodFaultCause.NotFinite;
            }

            if (residual <= settings.ToleranceN)
            {
                if (!settings.LeavesSaddles || escapes >= MostEscapes || !TryEscape(ref potential))
                {
                    return null;
                }

                trace?.Add(potential);
                continue;
            }

            if (step >= settings.MostSteps)
            {
                return RodFaultCause.TooManySteps;
            }

            if (!direction.TryNewton(pose, settings))
            {
                return RodFaultCause.NoDirection;
            }

            steps++;
            if (!TryStep(settings, ref potential))
            {
                // What is left is the rounding of the forces, not a force.
                return residual <= 1e3 * settings.ToleranceN && IsRounding(potential) ? null : RodFaultCause.NoDescent;
            }

            trace?.Add(potential);
        }
    }

    /// <summary>Leaves a state that is at rest but not stable, along a direction in which the potential falls.</summary>
    private bool TryEscape(ref double potential)
    {
        if (!direction.TryNegative())
        {
            return false;
        }

        escapes++;
        double share = 0.1 / Math.Max(direction.LargestTurn(pose), 1e-300);
        for (int halving = 0; halving < 10; halving++)
        {
            trial.Follow(pose, direction.Values, share, system.EndIsFree);
            double next = system.Potential(trial);
            if (next < potential)
            {
                (pose, trial) = (trial, pose);
                potential = next;
                return true;
            }

            share *= 0.5;
        }

        return false;
    }

    private bool TryStep(RelaxationSettings settings, ref double potential)
    {
        double slope = direction.Slope();
        double share = Math.Min(1, settings.LargestTurnRad / Math.Max(direction.LargestTurn(pose), 1e-300));
        double noise = Rounding * Math.Abs(potential);
        for (int halving = 0; halving < MostHalvings; halving++)
        {
            trial.Follow(pose, direction.Values, share, system.EndIsFree);
            double next = system.Potential(trial);
            bool falls = next < potential && next <= potential + (ArmijoShare * share * slope);

            // Near rest the fall is smaller than the rounding of the sum; then the step of Newton's method is taken as it is.
            bool still = halving == 0 && -slope * share < noise && next <= potential + noise;
            if (falls || still)
            {
                (pose, trial) = (trial, pose);
                potential = falls ? next : Math.Min(potential, next);
                return true;
            }

            share *= 0.5;
            if (halving == Patience && direction.TryPlain())
            {
                slope = direction.Slope();
                share = Math.Min(1, settings.LargestTurnRad / Math.Max(direction.LargestTurn(pose), 1e-300));
            }
        }

        return false;
    }

    private bool IsRounding(double potential) => -direction.Slope() < 100 * Rounding * Math.Max(Math.Abs(potential), 1e-12);

    private RodFault Fault(RodFaultCause cause, double depth) => new(cause, cause switch
    {
        RodFaultCause.NotFinite => "A place, force or distance of the wall is not a number.",
        RodFaultCause.TooManySteps => FormattableString.Invariant($"{steps} steps were not enough; a force of {residual:G3} N is left."),
        RodFaultCause.NoDescent => FormattableString.Invariant($"No step lowers the potential; a force of {residual:G3} N is left."),
        RodFaultCause.NoDirection => FormattableString.Invariant($"No direction of descent was found; a force of {residual:G3} N is left."),
        RodFaultCause.WallNotHeld => FormattableString.Invariant($"The rod lies {depth:G3} mm deep in the wall: it does not fit, or is pressed without limit."),
        _ => FormattableString.Invariant($"Friction did not settle; a force of {residual:G3} N is left."),
    }, residual, depth);

    private RelaxationResult Result(RodFault? fault, double depth, int rounds, ImmutableArray<ImmutableArray<double>> traces)
    {
        Vector3D[] forces = new Vector3D[pose.Count];
        double[] torques = new double[pose.Count - 1];
        double[] g = system.Gradient;
        bool[] held = system.Held;
        for (int i = 0; i < pose.Count; i++)
        {
            int a = 4 * i;
            forces[i] = new Vector3D(held[a] ? g[a] : 0, held[a + 1] ? g[a + 1] : 0, held[a + 2] ? g[a + 2] : 0);
            if (i < torques.Length)
            {
                torques[i] = held[a + 3] ? g[a + 3] : 0;
            }
        }

        return new RelaxationResult(
            pose.Save(), fault, system.Elasticity.Energy(pose), system.Wall.Energy(pose), system.Wall.Contacts(pose), system.Wall.Grips(pose),
            [.. forces], [.. torques], residual, depth, steps, rounds, traces);
    }
}
