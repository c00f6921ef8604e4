namespace Cavaxis.Anatomy.Body;

/// <summary>
/// Body surface area in m² from height and weight. Three formulas are in use and differ by a few per cent, more in the
/// very small and the very heavy; the one taken is named so that an index can be compared with its table.
/// </summary>
public static class BodySurfaceArea
{
    /// <summary>The formula this program takes: Haycock under 18 years, because it was fitted on newborns too, else
    /// Mosteller.</summary>
    /// <param name="habitus">The patient.</param>
    /// <returns>The formula.</returns>
    public static BsaFormula FormulaFor(BodyHabitus habitus)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        return habitus.IsAdult ? BsaFormula.Mosteller : BsaFormula.Haycock;
    }

    /// <summary>Body surface area by the formula that fits the age.</summary>
    /// <param name="habitus">The patient.</param>
    /// <returns>Area, m².</returns>
    public static double M2(BodyHabitus habitus) => M2(habitus, FormulaFor(habitus));

    /// <summary>Body surface area by a named formula.</summary>
    /// <param name="habitus">The patient.</param>
    /// <param name="formula">The formula.</param>
    /// <returns>Area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a formula.</exception>
    public static double M2(BodyHabitus habitus, BsaFormula formula)
    {
        ArgumentNullException.ThrowIfNull(habitus);
        return formula switch
        {
            BsaFormula.DuBois => DuBois(habitus.HeightCm, habitus.WeightKg),
            BsaFormula.Mosteller => Mosteller(habitus.HeightCm, habitus.WeightKg),
            BsaFormula.Haycock => Haycock(habitus.HeightCm, habitus.WeightKg),
            _ => throw new ArgumentOutOfRangeException(nameof(formula), formula, "Not a formula."),
        };
    }

    /// <summary>DuBois and DuBois, Arch Intern Med 1916;17:863.</summary>
    /// <param name="heightCm">Height, cm.</param>
    /// <param name="weightKg">Weight, kg.</param>
    /// <returns>Area, m².</returns>
    public static double DuBois(double heightCm, double weightKg) =>
        0.007184 * Math.Pow(heightCm, 0.725) * Math.Pow(weightKg, 0.425);

    /// <summary>Mosteller, N Engl J Med 1987;317:1098.</summary>
    /// <param name="heightCm">Height, cm.</param>
    /// <param name="weightKg">Weight, kg.</param>
    /// <returns>Area, m².</returns>
    public static double Mosteller(double heightCm, double weightKg) => Math.Sqrt(heightCm * weightKg / 3600);

    /// <summary>Haycock, Schwartz and Wisotsky, J Pediatr 1978;93:62.</summary>
    /// <param name="heightCm">Height, cm.</param>
    /// <param name="weightKg">Weight, kg.</param>
    /// <returns>Area, m².</returns>
    public static double Haycock(double heightCm, double weightKg) =>
        0.024265 * Math.Pow(heightCm, 0.3964) * Math.Pow(weightKg, 0.5378);
}
