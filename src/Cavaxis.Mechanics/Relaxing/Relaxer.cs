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
    private const double FirstShift = 1e-9;
    private const double LastShift = 1e6;
    private const double ShiftGrowth = 30;
    private const double ArmijoShare = 1e-4;
    private const int MostHalvings = 45;
    private const int MostLooks = 6;

    /// <summary>Least descent of a step that looks ahead, of that of the plain step.</summary>
    private const double LeastDescent = 1e-3;

    /// <summary>Rounding of the potential, of its size.</summary>
    private const double Rounding = 2e-13;

    private readonly RodSystem system = new();
    private RodPose pose = new();
    private RodPose trial = new();
    private double[] direction = [];
    private double[] plain = [];
    private double[] model = [];
    private double shift;
    private double residual;
    private int steps;
    private List<double>? trace;

    /// <summary>Brings a rod to rest.</summary>
    public RelaxationResult Relax(RelaxationTask task, RelaxationSettings settings)
    {
        system.Load(task, pose, settings);
        if (direction.Length < system.Size)
        {
            (direction, plain, model) = (new double[system.Size + 128], new double[system.Size + 128], new double[system.Size + 128]);
        }

        (steps, shift) = (0, 0);
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
                fault = Fault(known, depth);
            }
            else if (!system.Wall.Exists)
            {
                settled = true;
            }
            else
            {
                (depth, double change) = system.Wall.Renew(pose, settings.PenetrationMm);
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
                return null;
            }

            if (step >= settings.MostSteps)
            {
                return RodFaultCause.TooManySteps;
            }

            if (!TryDirection(settings))
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

    /// <summary>Direction of descent: that of Newton's method, with the wall as the step will meet it where that descends.</summary>
    private bool TryDirection(RelaxationSettings settings)
    {
        shift = shift > FirstShift ? shift / (ShiftGrowth * ShiftGrowth) : 0;
        shift = shift < FirstShift ? 0 : shift;
        Array.Copy(system.Gradient, model, system.Size);
        if (!TrySolve())
        {
            return false;
        }

        if (!system.Wall.Exists)
        {
            return true;
        }

        Array.Copy(direction, plain, system.Size);
        double slope = Slope();
        bool looked = false;
        for (int look = 0; look < MostLooks; look++)
        {
            double share = Math.Min(1, settings.LargestTurnRad / Math.Max(LargestTurn(), 1e-300));
            if (!system.Wall.LookAhead(pose, direction, share, look == 0, model, system.Hessian, system.Held))
            {
                break;
            }

            looked = true;
            if (!TrySolve())
            {
                Array.Copy(plain, direction, system.Size);
                return true;
            }
        }

        if (looked && !(Slope() < LeastDescent * slope))
        {
            Array.Copy(plain, direction, system.Size);
        }

        return true;
    }

    /// <summary>Solves the model; the shift needed last is tried smaller first.</summary>
    private bool TrySolve()
    {
        double arm = system.Elasticity.MeanLengthMm * system.Elasticity.MeanLengthMm;
        double unit = system.Elasticity.LeastBendNMm / arm;
        while (!system.Hessian.TryFactorise(shift * unit, shift * unit * arm))
        {
            shift = Math.Max(FirstShift, shift * ShiftGrowth);
            if (shift > LastShift)
            {
                return false;
            }
        }

        for (int k = 0; k < system.Size; k++)
        {
            direction[k] = system.Held[k] ? 0 : -model[k];
        }

        system.Hessian.Solve(direction);
        return true;
    }

    private bool TryStep(RelaxationSettings settings, ref double potential)
    {
        double slope = Slope();
        double share = Math.Min(1, settings.LargestTurnRad / Math.Max(LargestTurn(), 1e-300));
        double noise = Rounding * Math.Abs(potential);
        for (int halving = 0; halving < MostHalvings; halving++)
        {
            trial.Follow(pose, direction, share, system.EndIsFree);
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
        }

        return false;
    }

    private bool IsRounding(double potential) => -Slope() < 100 * Rounding * Math.Max(Math.Abs(potential), 1e-12);

    private double Slope()
    {
        double slope = 0;
        for (int k = 0; k < system.Size; k++)
        {
            slope += system.Held[k] ? 0 : direction[k] * system.Gradient[k];
        }

        return slope;
    }

    private double LargestTurn()
    {
        double largest = 0;
        for (int i = 0; i < pose.Count - 1; i++)
        {
            int a = 4 * i;
            double x = direction[a + 4] - direction[a];
            double y = direction[a + 5] - direction[a + 1];
            double z = direction[a + 6] - direction[a + 2];
            double turn = Math.Sqrt((x * x) + (y * y) + (z * z)) / pose.Lengths[i];
            largest = Math.Max(largest, Math.Max(turn, 0.25 * Math.Abs(direction[a + 3])));
        }

        return largest;
    }

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
