using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>
/// Recirculation by dilution: area of the second pass over area of the first, both carried by the pump flow. Repeats tell the error; with a single
/// injection the error is that of the method in vitro.
/// </summary>
public static class DilutionRecirculation
{
    /// <summary>Standard deviation of one measurement against flow probes in vitro, points: limits of agreement −18.6 to 7.9 over 2·1.96.</summary>
    public const double SingleSdPoints = (7.9 + 18.6) / (2 * WilsonShare.NormalQuantile975);

    /// <summary>Where that standard deviation comes from.</summary>
    public static Source SingleSdSource { get; } = new(
        "Modified thermodilution in vitro, areas in both limbs against flow probes: bias −5.4 %, limits of agreement −18.6 to 7.9 % (Anesthesiology, abstract)", Certainty.Derived);

    // Student's t for a one-sided 95 %, 1 to 10 degrees of freedom (standard table; closed form).
    private static readonly double[] Student = [6.314, 2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812];

    /// <summary>From one or more injections.</summary>
    /// <param name="injections">The injections, drawn at the same flow.</param>
    /// <returns>Recirculation, or why it cannot be told.</returns>
    /// <exception cref="InputFaultException">There is no injection.</exception>
    public static RecirculationMeasurement Of(IReadOnlyList<DilutionInjection> injections)
    {
        ArgumentNullException.ThrowIfNull(injections);
        if (injections.Count == 0)
        {
            throw new InputFaultException(new InputFault(FaultCode.MissingField, nameof(injections), "(nothing)", "at least one injection", "Give the areas of the injections."));
        }

        double[] percents = [.. injections.Select(static i => 100 * i.SecondPass.Value / i.FirstPass.Value)];
        double mean = percents.Average();
        double ofCurves = Math.Sqrt(injections.Sum(static i => Square(100 * i.SecondPass.Sd / i.FirstPass.Value) + Square(100 * i.SecondPass.Value * i.FirstPass.Sd / Square(i.FirstPass.Value)))) / injections.Count;
        bool single = injections.Count == 1;
        double repeats = single ? SingleSdPoints : Math.Sqrt(percents.Sum(p => Square(p - mean)) / (percents.Length - 1) / percents.Length);
        double sd = Math.Max(repeats, ofCurves);
        double quantile = single ? Estimate.NormalQuantile95 : Quantile(percents.Length - 1);
        double low = mean - (quantile * sd);
        double high = mean + (quantile * sd);
        List<string> cautions =
        [
            "Indicator that has gone round the body must not be counted into the second pass; the end of the passage decides it.",
            "In vitro the areas gave 5 points too little on average (limits of agreement −19 to 8).",
        ];
        if (single)
        {
            cautions.Add("A single injection: its error is that of the method in vitro, not this patient's.");
        }

        if (high - low > BloodGasRecirculation.WidestIntervalPoints || high < 0 || low > 100)
        {
            return new RecirculationMeasurement(
                RecirculationMethod.Dilution, null,
                string.Create(CultureInfo.InvariantCulture, $"Recirculation cannot be told by dilution: the injections disagree (90 % interval {low:0} to {high:0} %)."), cautions);
        }

        Estimate percent = Estimate.WithInterval(mean, sd, low, high, Origin.Calculated);
        return new RecirculationMeasurement(
            RecirculationMethod.Dilution, percent,
            string.Create(CultureInfo.InvariantCulture, $"Recirculation {mean:0} % (90 % interval {low:0} to {high:0} %) by dilution, {(single ? "one injection" : $"{percents.Length} injections")}."), cautions);
    }

    /// <summary>Student's quantile; above ten degrees of freedom by the first two terms of its expansion (Abramowitz and Stegun 26.7.5).</summary>
    internal static double Quantile(int freedom)
    {
        const double Z = Estimate.NormalQuantile95;
        return freedom <= Student.Length
            ? Student[freedom - 1]
            : Z + (((Z * Z * Z) + Z) / (4.0 * freedom)) + (((5 * Math.Pow(Z, 5)) + (16 * Z * Z * Z) + (3 * Z)) / (96.0 * freedom * freedom));
    }

    private static double Square(double x) => x * x;
}
