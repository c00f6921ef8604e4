namespace Cavaxis.Planning.Case;

/// <summary>Blood gas, haemoglobin and temperature.</summary>
public sealed record BloodSection
{
    /// <summary>Haemoglobin, g/dL.</summary>
    [Meaning("Haemoglobin, g/dL.")]
    [Number(3, 24, "g/dL", UsualSd = 0.2)]
    public Measurement? HaemoglobinGPerDl { get; init; }

    /// <summary>Haematocrit, percent.</summary>
    [Meaning("Haematocrit, percent; taken as three times the haemoglobin when left out.")]
    [Number(8, 75, "%", UsualSd = 1)]
    public Measurement? HaematocritPercent { get; init; }

    /// <summary>Core temperature, °C.</summary>
    [Meaning("Core temperature, degrees Celsius.")]
    [Number(20, 42, "Cel", UsualSd = 0.2)]
    public Measurement? TemperatureC { get; init; }

    /// <summary>Arterial pH.</summary>
    [Meaning("Arterial pH.")]
    [Number(6.5, 7.9, "1", UsualSd = 0.01)]
    public Measurement? ArterialPh { get; init; }

    /// <summary>Arterial PCO2, mmHg.</summary>
    [Meaning("Arterial carbon dioxide tension, mmHg.")]
    [Number(8, 200, "mm[Hg]", UsualSd = 1.5)]
    public Measurement? ArterialPco2MmHg { get; init; }

    /// <summary>Arterial PO2, mmHg.</summary>
    [Meaning("Arterial oxygen tension, mmHg.")]
    [Number(10, 700, "mm[Hg]", UsualSd = 2)]
    public Measurement? ArterialPo2MmHg { get; init; }

    /// <summary>Arterial saturation, percent.</summary>
    [Meaning("Arterial oxygen saturation, percent.")]
    [Number(10, 100, "%", UsualSd = 1.5)]
    public Measurement? ArterialSaturationPercent { get; init; }

    /// <summary>Mixed or central venous saturation, percent.</summary>
    [Meaning("Mixed or central venous oxygen saturation before support, percent.")]
    [Number(5, 95, "%", UsualSd = 3)]
    public Measurement? VenousSaturationPercent { get; init; }

    /// <summary>Inspired oxygen fraction.</summary>
    [Meaning("Inspired oxygen fraction, 0.21 to 1.")]
    [Number(0.21, 1, "1", UsualSd = 0.02)]
    public Measurement? InspiredOxygenFraction { get; init; }

    /// <summary>Lactate, mmol/L.</summary>
    [Meaning("Blood lactate, mmol/L.")]
    [Number(0, 40, "mmol/L", UsualSd = 0.3)]
    public Measurement? LactateMmolPerL { get; init; }

    /// <summary>Oxygen consumption, mL/min.</summary>
    [Meaning("Oxygen consumption, mL/min at standard conditions; estimated from size and temperature when left out.")]
    [Number(5, 800, "mL/min", UsualSd = 25)]
    public Measurement? OxygenConsumptionMlPerMin { get; init; }
}
