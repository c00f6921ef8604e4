using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>Pressure drop and hole shares of a lumen from its geometry.</summary>
public static class LumenHydraulics
{
    /// <summary>Highest flow accepted, m³/s (18 L/min).</summary>
    public const double HighestFlowM3PerS = 3e-4;

    private const int MostIterations = 200;
    private const double Smallest = 1e-300;

    // Relative error of the total flow; the shares are normalised afterwards, so that they sum to one to rounding.
    private const double Converged = 1e-13;

    /// <summary>
    /// Solves the lumen as a manifold: the flow through the outermost row is sought, monotonically, until the rows together carry
    /// the flow asked for. See <c>docs/models/devices.md</c>.
    /// </summary>
    /// <param name="lumen">The lumen.</param>
    /// <param name="flowM3PerS">Flow, 0 to 3e-4 m³/s.</param>
    /// <param name="fluid">The liquid.</param>
    /// <param name="tolerance">How well bore and holes are known; <see cref="GeometryTolerance.Labelled"/> when omitted.</param>
    /// <returns>Drop, its spread, shares, Reynolds number and velocity. At zero flow the shares are those of a vanishing flow.</returns>
    /// <exception cref="InputFaultException">The flow, the liquid or the lumen is outside what can be computed.</exception>
    public static LumenFlow At(Lumen lumen, double flowM3PerS, Fluid fluid, GeometryTolerance? tolerance = null)
    {
        Require.InRange(flowM3PerS, 0, HighestFlowM3PerS, "flow [m3/s]", "Give a flow that a cannula can carry.");
        CheckFluid(fluid);
        FlowPath path = FlowPath.Of(lumen);
        bool drains = lumen.Purpose == LumenPurpose.Drainage;

        // Below a millionth of a litre per minute the shares no longer change; it stands for a vanishing flow.
        double flow = Math.Max(flowM3PerS, 1e-12);
        Span<double> groups = path.GroupCount <= 32 ? stackalloc double[path.GroupCount] : new double[path.GroupCount];
        double first = SolveFirstRow(path, drains, flow, fluid, groups);
        DropLedger ledger = default;
        groups.Clear();
        double total = Walk(path, drains, first, fluid, groups, ref ledger, out double drop);
        return Summary(lumen, groups, total, flowM3PerS == 0 ? 0 : drop, flowM3PerS, ledger, tolerance ?? GeometryTolerance.Labelled);
    }

    internal static void CheckFluid(Fluid fluid)
    {
        Require.InRange(fluid.DensityKgPerM3, 700, 1400, "density [kg/m3]", "Give the density of water, blood or a blood substitute.");
        Require.InRange(fluid.ViscosityPaS, 2e-4, 0.1, "viscosity [Pa s]", "Give the dynamic viscosity in pascal seconds; water has about 0.001.");
    }

    private static LumenFlow Summary(
        Lumen lumen, Span<double> groups, double total, double drop, double flow, DropLedger ledger, GeometryTolerance tolerance)
    {
        double[] shares = new double[groups.Length];
        double fastest = 0;
        for (int g = 0; g < groups.Length; g++)
        {
            shares[g] = groups[g] / total;
            HoleGroup group = lumen.HoleGroups[g];
            double area = group.Count * Math.PI * group.DiameterMm * group.DiameterMm / 4 * 1e-6;
            fastest = Math.Max(fastest, shares[g] * flow / area);
        }

        return new LumenFlow(drop, ledger.RelativeSd(tolerance), shares, flow == 0 ? 0 : ledger.LargestReynolds, fastest);
    }

    private static double SolveFirstRow(FlowPath path, bool drains, double flow, Fluid fluid, Span<double> groups)
    {
        // In logarithms the total flow follows the first row's flow with a slope near one, so a first step of slope one and then the
        // secant converge in a few steps; the bracket makes it certain. The total is never less than the first row alone, so the
        // flow itself is an upper bound; a lower bound is found on the way or by going down.
        double high = Math.Log(flow);
        double low = double.NegativeInfinity;
        double last = high;
        double lastMiss = Miss(high, path, drains, flow, fluid, groups);
        if (lastMiss <= Converged)
        {
            return flow;
        }

        double here = high - lastMiss;
        for (int i = 0; i < MostIterations; i++)
        {
            double miss = Miss(here, path, drains, flow, fluid, groups);
            if (Math.Abs(miss) <= Converged)
            {
                return Math.Exp(here);
            }

            (low, high) = miss < 0 ? (here, high) : (low, here);
            double secant = here - (miss * (here - last) / (miss - lastMiss));
            (last, lastMiss) = (here, miss);
            here = secant > low && secant < high
                ? secant
                : double.IsNegativeInfinity(low) ? here - (2 * Math.Max(miss, 1e-3)) : 0.5 * (low + high);
            if (high - low <= 1e-15 * Math.Abs(high) || (i > MostIterations / 2 && !double.IsNegativeInfinity(low)))
            {
                here = 0.5 * (low + high);
                if (high - low <= 1e-15 * Math.Abs(high))
                {
                    break;
                }
            }
        }

        return Math.Exp(here);
    }

    private static double Miss(double logFirst, FlowPath path, bool drains, double flow, Fluid fluid, Span<double> groups)
    {
        DropLedger ledger = default;
        groups.Clear();
        double total = Walk(path, drains, Math.Max(Smallest, Math.Exp(logFirst)), fluid, groups, ref ledger, out _);
        return Math.Log(total / flow);
    }

    private static double Walk(
        FlowPath path, bool drains, double first, Fluid fluid, Span<double> groups, ref DropLedger ledger, out double drop) =>
        drains
            ? DrainageManifold.Walk(path.Steps, first, fluid, groups, ref ledger, out drop)
            : ReturnManifold.Walk(path.Steps, first, fluid, groups, ref ledger, out drop);
}
