using Cavaxis.Devices.Hydraulics;

namespace Cavaxis.Planning.Running;

/// <summary>A pressure drop over flow as a linear and a quadratic part, fitted by least squares with neither part negative.</summary>
/// <param name="LinearMmHgPerLPerMin">Linear part.</param>
/// <param name="QuadraticMmHgPerLPerMin2">Quadratic part.</param>
/// <param name="LargestErrorMmHg">Largest difference from the drop that was fitted.</param>
/// <param name="LowestFlowLPerMin">Lowest flow of the fit.</param>
/// <param name="HighestFlowLPerMin">Highest flow of the fit.</param>
public sealed record DropFit(
    double LinearMmHgPerLPerMin, double QuadraticMmHgPerLPerMin2, double LargestErrorMmHg, double LowestFlowLPerMin, double HighestFlowLPerMin)
{
    private const int Points = 24;

    private const double LowestShare = 0.15;
    private const double HighestShare = 1.5;

    /// <summary>Fits a drop of a circuit over the flows round the one it runs at: 0.15 to 1.5 of it.</summary>
    /// <param name="flowLPerMin">Flow it runs at, above zero.</param>
    /// <param name="dropMmHg">The drop at a flow in L/min.</param>
    /// <returns>The fit.</returns>
    public static DropFit Around(double flowLPerMin, Func<double, double> dropMmHg) =>
        Of(dropMmHg, LowestShare * flowLPerMin, Math.Min(HighestShare * flowLPerMin, CannulaHydraulics.HighestFlowLPerMin));

    /// <summary>Fits a drop.</summary>
    /// <param name="dropMmHg">The drop at a flow in L/min.</param>
    /// <param name="lowestLPerMin">Lowest flow, above zero.</param>
    /// <param name="highestLPerMin">Highest flow.</param>
    /// <returns>The fit.</returns>
    public static DropFit Of(Func<double, double> dropMmHg, double lowestLPerMin, double highestLPerMin)
    {
        ArgumentNullException.ThrowIfNull(dropMmHg);
        (double Flow, double Drop)[] points = [.. Enumerable.Range(0, Points).Select(i =>
        {
            double flow = double.Lerp(lowestLPerMin, highestLPerMin, i / (Points - 1.0));
            return (flow, dropMmHg(flow));
        })];
        double two = points.Sum(p => Math.Pow(p.Flow, 2));
        double three = points.Sum(p => Math.Pow(p.Flow, 3));
        double four = points.Sum(p => Math.Pow(p.Flow, 4));
        double first = points.Sum(p => p.Flow * p.Drop);
        double second = points.Sum(p => p.Flow * p.Flow * p.Drop);
        double whole = (two * four) - (three * three);
        double linear = ((first * four) - (second * three)) / whole;
        double quadratic = ((second * two) - (first * three)) / whole;
        if (linear < 0)
        {
            (linear, quadratic) = (0, second / four);
        }
        else if (quadratic < 0)
        {
            (linear, quadratic) = (first / two, 0);
        }

        double worst = points.Max(p => Math.Abs((linear * p.Flow) + (quadratic * p.Flow * p.Flow) - p.Drop));
        return new DropFit(linear, quadratic, worst, lowestLPerMin, highestLPerMin);
    }
}
