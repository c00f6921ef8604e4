using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Demand;

/// <summary>
/// Oxygen consumption and carbon dioxide production of a person at rest under intensive care, where none was measured.
/// </summary>
/// <remarks>
/// A wide guess by design: estimated consumption misses the measured one by a quarter or more in many patients, and the
/// spread says so. A measured value replaces it.
/// </remarks>
public sealed record MetabolicDemand
{
    /// <summary>Consumption of an adult at 37 °C, mL/min for one m² of body surface.</summary>
    public const double AdultMlPerMinPerM2 = 120;

    /// <summary>Consumption of a newborn at 37 °C, mL/min/kg.</summary>
    public const double NewbornMlPerMinPerKg = 5.5;

    /// <summary>Consumption of a child from three years at 37 °C, mL/min/kg.</summary>
    public const double ChildMlPerMinPerKg = 4.5;

    /// <summary>Factor for one degree of warming.</summary>
    public const double FactorPerC = 1.10;

    /// <summary>
    /// Relative standard deviation at 37 °C, between people (21 to 28 % in two cohorts under intensive care) and between
    /// the cohorts' means (217 and 287 mL/min).
    /// </summary>
    public const double RelativeSd = 0.25;

    /// <summary>Standard deviation of the logarithm of <see cref="FactorPerC"/>.</summary>
    public const double LogFactorSdPerC = 0.03;

    /// <summary>Carbon dioxide produced for one part of oxygen consumed.</summary>
    public const double RespiratoryQuotient = 0.80;

    /// <summary>Standard deviation of the respiratory quotient.</summary>
    public const double RespiratoryQuotientSd = 0.06;

    private MetabolicDemand(Quantities.Estimate oxygen, Quantities.Estimate carbonDioxide) =>
        (OxygenConsumptionMlPerMin, CarbonDioxideProductionMlPerMin) = (oxygen, carbonDioxide);

    /// <summary>Oxygen consumption, mL/min at standard conditions.</summary>
    public Estimate OxygenConsumptionMlPerMin { get; }

    /// <summary>Carbon dioxide production, mL/min at standard conditions.</summary>
    public Estimate CarbonDioxideProductionMlPerMin { get; }

    /// <summary>Where the numbers come from.</summary>
    public IReadOnlyList<Source> Sources { get; } = AllSources;

    private static IReadOnlyList<Source> AllSources { get; } =
    [
        new(
            "Bartlett 2016, J Intensive Care Med, 10.1177/0885066616641383: 120 mL/min/m², child 4-5, newborn 5-6 "
            + "mL/min/kg, carbon dioxide 0.8 of it",
            Certainty.FromMemory),
        new(
            "Monograph on cardiac output, normal adult: 132 mL/min/m²; anaesthesia teaching texts: 245 to 300 mL/min",
            Certainty.Seen),
        new("Seear et al., children after heart surgery: 4.3 (SD 0.8) mL/min/kg", Certainty.Seen),
        new(
            "Adults on extracorporeal support, 52 patients: 1523 (SD 432) kcal/day, about 217 mL/min",
            Certainty.Derived),
        new(
            "Critically ill adults, 31 patients, Clin Nutr 1989;8:89: 287 (SD 60) mL/min by calorimetry",
            Certainty.Seen),
        new(
            "Evans et al. 1978, Arch Dis Child 53:330, term newborns: 6.52 (SD 0.90) mL/kg/min; another series "
            + "4.6 at least",
            Certainty.Seen),
        new(
            "10 % for one degree is a Q10 of 2.6, between sheep on bypass (2.38) and the human brain (2.8, "
            + "Croughwell 1992)",
            Certainty.Derived),
        new("Ages 8 to 16 pass in a straight line from weight to body surface", Certainty.Assumption),
    ];

    /// <summary>Estimates consumption and production.</summary>
    /// <param name="ageYears">Age, 0 to 120 years.</param>
    /// <param name="bodySurfaceAreaM2">Body surface, 0.1 to 4 m².</param>
    /// <param name="weightKg">Weight, 0.4 to 400 kg.</param>
    /// <param name="temperatureC">Core temperature, 15 to 43 °C.</param>
    /// <returns>Both estimates with skewed 90 % intervals.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static MetabolicDemand Estimate(
        double ageYears, double bodySurfaceAreaM2, double weightKg, double temperatureC)
    {
        double age = Require.InRange(ageYears, 0, 120, "ageYears", "Give the age in years.");
        double surface = Require.InRange(
            bodySurfaceAreaM2, 0.1, 4, "bodySurfaceAreaM2", "Give the body surface in m².");
        double weight = Require.InRange(weightKg, 0.4, 400, "weightKg", "Give the weight in kg.");
        double warm = BloodInput.Temperature(temperatureC, 15, 43) - 37;

        double perKg = double.Lerp(NewbornMlPerMinPerKg, ChildMlPerMinPerKg, Math.Min(age / 3, 1));
        double grown = Math.Clamp((age - 8) / (16 - 8), 0, 1);
        double oxygen = double.Lerp(perKg * weight, AdultMlPerMinPerM2 * surface, grown) * Math.Pow(FactorPerC, warm);
        double relative = double.Hypot(RelativeSd, LogFactorSdPerC * warm);
        return new MetabolicDemand(
            Skewed(oxygen, relative),
            Skewed(oxygen * RespiratoryQuotient, double.Hypot(relative, RespiratoryQuotientSd / RespiratoryQuotient)));
    }

    // Log-normal, because a consumption cannot be negative however wide the guess.
    private static Estimate Skewed(double value, double relativeSd)
    {
        double spread = Math.Exp(Quantities.Estimate.NormalQuantile95 * Math.Sqrt(Math.Log(1 + (relativeSd * relativeSd))));
        return Quantities.Estimate.WithInterval(
            value, value * relativeSd, value / spread, value * spread, Origin.Estimated);
    }
}
