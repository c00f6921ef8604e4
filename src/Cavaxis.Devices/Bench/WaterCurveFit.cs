using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Bench;

/// <summary>
/// Least squares of ln Eu against ln Re. The order follows the number of points (1 below five, 2 below eight, else 3) and is lowered
/// until the Euler number falls, and the pressure drop rises, over the whole bench range.
/// </summary>
public static class WaterCurveFit
{
    /// <summary>Fewest different flows.</summary>
    public const int FewestFlows = 4;

    /// <summary>Smallest ratio of the highest to the lowest flow.</summary>
    public const double SmallestFlowRatio = 1.5;

    // A measured curve may lie flat (fully inertial); a rise of Eu this small is scatter, not physics.
    private const double FlatSlopeSlack = 0.02;

    // Steeper than laminar cannot be; the slack is for scatter.
    private const double SteepestSlope = -1.1;

    /// <summary>Fits a curve.</summary>
    /// <param name="points">Bench points, in any order.</param>
    /// <param name="referenceDiameterMm">Diameter that makes the variables dimensionless, 0.5 to 20 mm.</param>
    /// <param name="fluid">The liquid on the bench.</param>
    /// <returns>The curve and how well it fits.</returns>
    /// <exception cref="InputFaultException">Too few or too narrow points, or points that no falling Euler number follows.</exception>
    public static (WaterCurve Curve, WaterCurveQuality Quality) Fit(
        IReadOnlyList<BenchPoint> points, double referenceDiameterMm, Fluid fluid)
    {
        ArgumentNullException.ThrowIfNull(points);
        Require.InRange(referenceDiameterMm, 0.5, 20, "reference diameter [mm]", "Give the inner diameter of the lumen.");
        LumenHydraulics.CheckFluid(fluid);
        CheckSpread(points);
        double diameter = referenceDiameterMm * UnitFactors.MetresPerMm;
        double area = Math.PI * diameter * diameter / 4;
        double[] x = new double[points.Count];
        double[] y = new double[points.Count];
        for (int i = 0; i < points.Count; i++)
        {
            double velocity = points[i].FlowM3PerS / area;
            x[i] = Math.Log(fluid.DensityKgPerM3 * velocity * diameter / fluid.ViscosityPaS);
            y[i] = Math.Log(points[i].DropPa / (fluid.DensityKgPerM3 * velocity * velocity));
        }

        int flows = points.Select(p => p.FlowM3PerS).Distinct().Count();
        for (int order = flows < 5 ? 1 : flows < 8 ? 2 : 3; order >= 1; order--)
        {
            double[] coefficients = LogPolynomial.LeastSquares(x, y, order);
            double squares = 0;
            double largest = 0;
            for (int i = 0; i < x.Length; i++)
            {
                double residual = y[i] - LogPolynomial.At(coefficients, x[i]);
                squares += residual * residual;
                largest = Math.Max(largest, Math.Abs(Math.Exp(residual) - 1));
            }

            double sd = Math.Sqrt(squares / Math.Max(1, x.Length - order - 1));
            WaterCurve curve = new(referenceDiameterMm, coefficients, Math.Exp(x.Min()), Math.Exp(x.Max()), sd);
            if (IsPhysical(curve))
            {
                return (curve, new WaterCurveQuality(
                    points.Count, order, sd, largest,
                    points.Min(p => p.FlowM3PerS) / UnitFactors.CubicMetresPerSecondPerLPerMin,
                    points.Max(p => p.FlowM3PerS) / UnitFactors.CubicMetresPerSecondPerLPerMin));
            }
        }

        throw new InputFaultException(new InputFault(
            FaultCode.Contradiction, "pressure drop", "a drop that does not grow between the first and the second power of flow",
            "a drop that rises with flow, at least in proportion and at most as its square",
            "Check the units, subtract the zero reading and the drop of the tubing, and look for a mistyped point."));
    }

    private static bool IsPhysical(WaterCurve curve)
    {
        const int Steps = 64;
        double ratio = curve.HighestReynolds / curve.LowestReynolds;
        for (int i = 0; i <= Steps; i++)
        {
            double slope = curve.SlopeAt(curve.LowestReynolds * Math.Pow(ratio, (double)i / Steps));
            if (!(slope >= SteepestSlope && slope <= FlatSlopeSlack))
            {
                return false;
            }
        }

        return true;
    }

    private static void CheckSpread(IReadOnlyList<BenchPoint> points)
    {
        foreach (BenchPoint point in points)
        {
            Require.InRange(point.FlowM3PerS, 1e-9, LumenHydraulics.HighestFlowM3PerS, "flow [m3/s]", "Give positive flows.");
            Require.InRange(point.DropPa, 1e-3, 1e6, "pressure drop [Pa]", "Give positive pressure drops.");
        }

        int flows = points.Select(p => p.FlowM3PerS).Distinct().Count();
        if (flows < FewestFlows)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "flow", string.Create(CultureInfo.InvariantCulture, $"{flows} different flows"),
                string.Create(CultureInfo.InvariantCulture, $"at least {FewestFlows} different flows"), "Measure at more flows."));
        }

        double ratio = points.Max(p => p.FlowM3PerS) / points.Min(p => p.FlowM3PerS);
        if (ratio < SmallestFlowRatio)
        {
            throw new InputFaultException(new InputFault(
                FaultCode.TooFewPoints, "flow", string.Create(CultureInfo.InvariantCulture, $"highest over lowest flow {ratio:G3}"),
                string.Create(CultureInfo.InvariantCulture, $"a ratio of at least {SmallestFlowRatio}"), "Measure over a wider range of flows."));
        }
    }
}
