using Cavaxis.Mechanics.Rods;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>The direction of one step.</summary>
/// <param name="system">Potential and its derivatives at the pose from which the step starts.</param>
internal sealed class DescentDirection(RodSystem system)
{
    private const double FirstShift = 1e-9;
    private const double LastShift = 1e6;
    private const double ShiftGrowth = 30;
    private const int MostLooks = 6;

    /// <summary>Least descent of a step that looks ahead, of that of the plain step.</summary>
    private const double LeastDescent = 1e-3;

    private double[] plain = [];
    private double[] model = [];
    private double shift;
    private bool looksAhead;

    /// <summary>Three coordinates and an angle for each node.</summary>
    public double[] Values { get; private set; } = [];

    /// <summary>Begins a task.</summary>
    public void Begin()
    {
        shift = 0;
        if (Values.Length < system.Size)
        {
            (Values, plain, model) = (new double[system.Size + 128], new double[system.Size + 128], new double[system.Size + 128]);
        }
    }

    /// <summary>A direction along which the potential curves downwards, towards its fall.</summary>
    /// <returns>False where the second derivatives have none.</returns>
    public bool TryNegative()
    {
        if (system.Hessian.TryFactorise(system.NoticeableCurvature, system.NoticeableAngleCurvature))
        {
            return false;
        }

        system.Hessian.NegativeDirection(Values);
        double sign = Slope() > 0 ? -1 : 1;
        for (int k = 0; k < system.Size; k++)
        {
            Values[k] *= sign;
        }

        return true;
    }

    /// <summary>Direction of descent: that of Newton's method, with the wall as the step will meet it where that descends.</summary>
    public bool TryNewton(RodPose pose, RelaxationSettings settings)
    {
        shift = shift > FirstShift ? shift / (ShiftGrowth * ShiftGrowth) : 0;
        shift = shift < FirstShift ? 0 : shift;
        looksAhead = false;
        Array.Copy(system.Gradient, model, system.Size);
        if (!TrySolve())
        {
            return false;
        }

        if (!system.Wall.Exists)
        {
            return true;
        }

        Array.Copy(Values, plain, system.Size);
        double slope = Slope();
        for (int look = 0; look < MostLooks; look++)
        {
            double share = Math.Min(1, settings.LargestTurnRad / Math.Max(LargestTurn(pose), 1e-300));
            if (!system.Wall.LookAhead(pose, Values, share, look == 0, model, system.Hessian, system.Held))
            {
                break;
            }

            looksAhead = true;
            if (!TrySolve())
            {
                return TryPlain();
            }
        }

        return !looksAhead || Slope() < LeastDescent * slope || TryPlain();
    }

    /// <summary>Falls back from a direction that looks ahead to that of the wall as it is where the step starts.</summary>
    /// <returns>False where it is that already.</returns>
    public bool TryPlain()
    {
        if (!looksAhead)
        {
            return false;
        }

        Array.Copy(plain, Values, system.Size);
        looksAhead = false;
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
            Values[k] = system.Held[k] ? 0 : -model[k];
        }

        system.Hessian.Solve(Values);
        return true;
    }

    /// <summary>Change of the potential along the direction, to first order.</summary>
    public double Slope()
    {
        double slope = 0;
        for (int k = 0; k < system.Size; k++)
        {
            slope += system.Held[k] ? 0 : Values[k] * system.Gradient[k];
        }

        return slope;
    }

    /// <summary>Largest turn of an edge, rad.</summary>
    public double LargestTurn(RodPose pose)
    {
        double largest = 0;
        for (int i = 0; i < pose.Count - 1; i++)
        {
            int a = 4 * i;
            double x = Values[a + 4] - Values[a];
            double y = Values[a + 5] - Values[a + 1];
            double z = Values[a + 6] - Values[a + 2];
            double turn = Math.Sqrt((x * x) + (y * y) + (z * z)) / pose.Lengths[i];
            largest = Math.Max(largest, Math.Max(turn, 0.25 * Math.Abs(Values[a + 3])));
        }

        return largest;
    }
}
