using Cavaxis.Circulation.Equations;
using Cavaxis.Circulation.Lanes;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Solver;

namespace Cavaxis.Circulation.Simulation;

/// <summary>
/// Notes when a cava falls below half of its volume at zero transmural pressure and when it rises above it again. The equations are
/// smooth there (tube law), so the integration need not stop; the moment is found on the dense output.
/// </summary>
/// <param name="parameters">Numbers of the patient.</param>
/// <param name="inner">Another witness to be served with the same steps; may be null.</param>
internal sealed class CollapseWatch(CirculationParameters parameters, IStepWitness<OneLane>? inner = null) : IStepWitness<OneLane>
{
    /// <summary>Volume over volume at zero transmural pressure below which a vein counts as collapsed: the transmural pressure is then −K(2^1.5 − 1/4).</summary>
    public const double CollapsedFilling = 0.5;

    private const double ShareTolerance = 1e-7;

    private static readonly (int Index, CirculationParameter Zero)[] Veins =
    [
        (StateIndex.SuperiorCava, CirculationParameter.SuperiorCavaZeroVolumeMl),
        (StateIndex.ThoracicCava, CirculationParameter.ThoracicCavaZeroVolumeMl),
        (StateIndex.AbdominalCava, CirculationParameter.AbdominalCavaZeroVolumeMl),
    ];

    private readonly List<CollapseEvent> events = [];

    /// <summary>Events so far, by time.</summary>
    public IReadOnlyList<CollapseEvent> Events => events;

    /// <inheritdoc/>
    public void Step(LaneIntegrator<OneLane> integrator, ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        double length = integrator.StepLength(0);
        double end = length > 0 ? Math.Min(1, (to[0] - from[0]) / length) : 0;
        for (int v = 0; v < Veins.Length && end > 0; v++)
        {
            double mark = CollapsedFilling * parameters[Veins[v].Zero];
            double before = integrator.State[Veins[v].Index].Value - mark;
            double after = integrator.DenseAt(0, Veins[v].Index, end) - mark;
            if (before >= 0 != after >= 0)
            {
                events.Add(new CollapseEvent(from[0] + (length * Crossing(integrator, v, mark, end, before)), (CollapsibleVein)v, after < 0));
            }
        }

        events.Sort(static (a, b) => a.TimeS.CompareTo(b.TimeS));
        inner?.Step(integrator, from, to);
    }

    private static double Crossing(LaneIntegrator<OneLane> integrator, int vein, double mark, double end, double before)
    {
        (double low, double high) = (0, end);
        while (high - low > ShareTolerance)
        {
            double middle = 0.5 * (low + high);
            bool same = integrator.DenseAt(0, Veins[vein].Index, middle) - mark >= 0 == before >= 0;
            (low, high) = same ? (middle, high) : (low, middle);
        }

        return high;
    }
}
