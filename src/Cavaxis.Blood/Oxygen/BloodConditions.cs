using Cavaxis.Quantities.Faults;

namespace Cavaxis.Blood.Oxygen;

/// <summary>
/// What shifts the oxygen dissociation curve. pH and PCO2 are those of the blood at its own temperature, not the
/// 37 °C values that an analyser prints without correction.
/// </summary>
/// <remarks>
/// The shift is worked out once, here, because inner loops ask for thousands of saturations under one set of conditions.
/// <c>default</c> is not a set of conditions; every checked entry refuses it.
/// </remarks>
public readonly record struct BloodConditions
{
    /// <summary>Standard conditions: pH 7.40, 37 °C, 2,3-DPG 5.0 mmol/L of red cells, PCO2 40 mmHg.</summary>
    public BloodConditions()
        : this(StandardPH, StandardTemperatureC, StandardDpgMmolPerL, StandardPco2MmHg)
    {
    }

    /// <summary>Given conditions; whatever is left out is standard.</summary>
    /// <param name="pH">pH of the blood at its own temperature, 6.5 to 7.9.</param>
    /// <param name="temperatureC">Temperature, 10 to 45 °C.</param>
    /// <param name="dpgMmolPerL">2,3-diphosphoglycerate in the red cells, 0 to 15 mmol/L.</param>
    /// <param name="pco2MmHg">Carbon dioxide tension, 1 to 300 mmHg.</param>
    /// <exception cref="InputFaultException">A value is not finite or outside its range.</exception>
    public BloodConditions(
        double pH,
        double temperatureC = StandardTemperatureC,
        double dpgMmolPerL = StandardDpgMmolPerL,
        double pco2MmHg = StandardPco2MmHg)
    {
        PH = Require.InRange(pH, 6.5, 7.9, "pH", "Give the pH at the temperature of the blood.");
        TemperatureC = BloodInput.Temperature(temperatureC, 10, 45);
        DpgMmolPerL = Require.InRange(
            dpgMmolPerL, 0, 15, "dpgMmolPerL", "Give 2,3-DPG in mmol per litre of red cells; leave it out if unknown.");
        Pco2MmHg = Require.InRange(
            pco2MmHg, 1, 300, "pco2MmHg", "Give the carbon dioxide tension in mmHg (1 kPa is 7.5 mmHg).");
        VirtualPo2Factor = Math.Exp(OxygenDissociation.LnVirtualShift(PH, TemperatureC, DpgMmolPerL, Pco2MmHg));
    }

    /// <summary>Standard pH.</summary>
    public const double StandardPH = 7.40;

    /// <summary>Standard temperature, °C.</summary>
    public const double StandardTemperatureC = 37;

    /// <summary>Standard 2,3-DPG, mmol per litre of red cells (Siggaard-Andersen et al. 1984).</summary>
    public const double StandardDpgMmolPerL = 5.0;

    /// <summary>Standard carbon dioxide tension, mmHg.</summary>
    public const double StandardPco2MmHg = 40;

    /// <summary>The standard conditions.</summary>
    public static BloodConditions Standard { get; } = new();

    /// <summary>pH at the temperature of the blood.</summary>
    public double PH { get; }

    /// <summary>Temperature, °C.</summary>
    public double TemperatureC { get; }

    /// <summary>2,3-diphosphoglycerate, mmol per litre of red cells.</summary>
    public double DpgMmolPerL { get; }

    /// <summary>Carbon dioxide tension, mmHg.</summary>
    public double Pco2MmHg { get; }

    /// <summary>Virtual PO2 (the one that gives the same saturation under standard conditions) divided by the real PO2.</summary>
    internal double VirtualPo2Factor { get; }

    /// <summary>Refuses <c>default</c>, which no constructor made.</summary>
    internal double RequireVirtualPo2Factor() => VirtualPo2Factor > 0
        ? VirtualPo2Factor
        : throw new InputFaultException(new InputFault(
            FaultCode.MissingField, "conditions", "(nothing)", "pH, temperature, 2,3-DPG and PCO2",
            "Use BloodConditions.Standard or give the conditions."));
}
