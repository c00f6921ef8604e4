using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Rheology;

/// <summary>
/// Viscosity of blood at high shear (above some 100 per second), where it is Newtonian: μ = μp(37 °C) · exp(2.31 H) ·
/// exp(0.03 (37 − T)). For cannulae and tubing; not for slow flow and not for vessels under a third of a millimetre.
/// </summary>
/// <remarks>
/// No measured table by haematocrit and temperature could be opened. The law was chosen because it lies in the middle of
/// the published laws and values that were; their spread is <see cref="RelativeSd"/> and must be carried along.
/// </remarks>
public static class BloodViscosity
{
    /// <summary>
    /// Relative standard deviation: 11 % between healthy people measured alike and 9 % between five published laws and
    /// values at haematocrit 0.45 and 37 °C (3.1 to 4.0 mPa s), added in squares and rounded up.
    /// </summary>
    public const double RelativeSd = 0.15;

    /// <summary>Viscosity of plasma at 37 °C, Pa s.</summary>
    public const double PlasmaPascalSecondsAt37 = 1.2e-3;

    /// <summary>Exponent of the haematocrit.</summary>
    public const double HaematocritExponent = 2.31;

    /// <summary>Relative fall for one degree of warming.</summary>
    public const double TemperatureExponentPerC = 0.03;

    /// <summary>Where the law comes from.</summary>
    public static IReadOnlyList<Source> Sources { get; } =
    [
        new("Rand et al. 1964, J Appl Physiol 19:117, exponential fit as used in bypass models", Certainty.FromMemory),
        new(
            "Harkness, as quoted in a blood-rheology methods text: about 3 % fall for one degree",
            Certainty.SeenSecondHand),
        new("Eckmann et al. 2000, Anesth Analg 91:539: 50 to 300 % rise from 37 to 22 °C", Certainty.Seen),
        new("Plasma 1.2 mPa s at 37 °C: standard texts", Certainty.FromMemory),
        new("Wesołowski and Młyńczak 2019, 30 healthy people at 37 °C: 3.352 (SD 0.360) mPa s", Certainty.Seen),
    ];

    /// <summary>Viscosity of whole blood at high shear.</summary>
    /// <param name="haematocrit">Haematocrit, a fraction from 0 to 0.75.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <returns>Dynamic viscosity, Pa s.</returns>
    /// <exception cref="InputFaultException">A value is not finite or out of range.</exception>
    public static double PascalSeconds(double haematocrit, double temperatureC) =>
        PlasmaPascalSecondsAt37 * Math.Exp(
            (HaematocritExponent * BloodInput.Haematocrit(haematocrit))
            + (TemperatureExponentPerC * (37 - BloodInput.Temperature(temperatureC, 10, 45))));
}
