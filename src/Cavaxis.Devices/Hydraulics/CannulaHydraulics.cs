using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Hydraulics;

/// <summary>Pressure drop of a cannula: from its bench curve where there is one, else from its geometry.</summary>
public static class CannulaHydraulics
{
    /// <summary>Highest flow accepted, L/min.</summary>
    public const double HighestFlowLPerMin = 15;

    /// <summary>Hydraulic state of the lumen with the given purpose.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="purpose">Drainage or return.</param>
    /// <param name="flowLPerMin">Flow, 0 to 15 L/min.</param>
    /// <param name="fluid">The liquid.</param>
    /// <returns>The state. Hole shares always come from the geometry.</returns>
    /// <exception cref="InputFaultException">The cannula has no such lumen, or a number is outside what can be computed.</exception>
    public static LumenFlow At(Cannula cannula, LumenPurpose purpose, double flowLPerMin, Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        Require.InRange(flowLPerMin, 0, HighestFlowLPerMin, "flowLPerMin", "Give a flow that a cannula can carry.");
        int index = LumenIndex(cannula, purpose);
        double flow = flowLPerMin * UnitFactors.CubicMetresPerSecondPerLPerMin;
        LumenFlow geometric = LumenHydraulics.At(
            cannula.Lumens[index], flow, fluid, GeometryTolerance.For(cannula.GeometrySource.Certainty));
        return cannula.WaterCurve.TryGetValue(index, out WaterCurve? curve) ? FromBench(curve, flow, fluid, geometric) : geometric;
    }

    /// <summary>The flow at which the drop reaches a given value: the inverse of <see cref="At"/>.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <param name="purpose">Drainage or return.</param>
    /// <param name="dropPa">Pressure drop, 0 to 200 000 Pa.</param>
    /// <param name="fluid">The liquid.</param>
    /// <returns>Flow in L/min; the highest flow accepted when even that needs less.</returns>
    /// <exception cref="InputFaultException">The cannula has no such lumen, or a number is outside what can be computed.</exception>
    public static double FlowLPerMinFor(Cannula cannula, LumenPurpose purpose, double dropPa, Fluid fluid)
    {
        Require.InRange(dropPa, 0, 200_000, "dropPa", "Give a pressure drop that a circuit can bear.");
        double low = 0;
        double high = HighestFlowLPerMin;
        if (At(cannula, purpose, high, fluid).PressureDropPa <= dropPa)
        {
            return high;
        }

        // The drop grows nearly with the square of flow, so the root is sought in √drop, with bisection as the guard.
        double goal = Math.Sqrt(dropPa);
        double atLow = -goal;
        double atHigh = Math.Sqrt(At(cannula, purpose, high, fluid).PressureDropPa) - goal;
        for (int i = 0; i < 100 && high - low > 1e-10; i++)
        {
            double next = i % 3 == 2 ? 0.5 * (low + high) : low - (atLow * (high - low) / (atHigh - atLow));
            double miss = Math.Sqrt(At(cannula, purpose, next, fluid).PressureDropPa) - goal;
            if (Math.Abs(miss) <= 1e-12 * (1 + goal))
            {
                return next;
            }

            (low, atLow, high, atHigh) = miss < 0 ? (next, miss, high, atHigh) : (low, atLow, next, miss);
        }

        return 0.5 * (low + high);
    }

    private static LumenFlow FromBench(WaterCurve curve, double flow, Fluid fluid, LumenFlow geometric)
    {
        if (flow == 0)
        {
            return geometric with { FromBenchCurve = true };
        }

        double area = Math.PI * curve.ReferenceDiameterMm * curve.ReferenceDiameterMm / 4 * 1e-6;
        double velocity = flow / area;
        double reynolds = fluid.DensityKgPerM3 * velocity * curve.ReferenceDiameterMm * 1e-3 / fluid.ViscosityPaS;
        double drop = curve.EulerAt(reynolds) * fluid.DensityKgPerM3 * velocity * velocity;
        return geometric with
        {
            PressureDropPa = drop,
            RelativeSd = curve.RelativeSdAt(reynolds),
            FromBenchCurve = true,
            BeyondBenchRange = !curve.Covers(reynolds),
        };
    }

    private static int LumenIndex(Cannula cannula, LumenPurpose purpose)
    {
        for (int i = 0; i < cannula.Lumens.Count; i++)
        {
            if (cannula.Lumens[i].Purpose == purpose)
            {
                return i;
            }
        }

        throw new InputFaultException(new InputFault(
            FaultCode.NotFound,
            string.Create(CultureInfo.InvariantCulture, $"{cannula.Id}.lumens"),
            "(nothing)",
            string.Create(CultureInfo.InvariantCulture, $"a lumen for {purpose}"),
            "Choose a cannula that has this lumen."));
    }
}
