namespace Cavaxis.Planning.Case;

/// <summary>How the patient breathes or is ventilated at the time of the observations.</summary>
public sealed record VentilationSection
{
    /// <summary>Who moves the chest.</summary>
    [Meaning("Who moves the chest.")]
    public VentilationMode Mode { get; init; }

    /// <summary>Breaths a minute.</summary>
    [Meaning("Breaths, per minute.")]
    [Number(4, 90, "/min", UsualSd = 1)]
    public Measurement? RatePerMin { get; init; }

    /// <summary>Positive end-expiratory pressure, cmH2O.</summary>
    [Meaning("Positive end-expiratory pressure, cmH2O.")]
    [Number(0, 35, "cm[H2O]", UsualSd = 0.5)]
    public Measurement? PeepCmH2O { get; init; }

    /// <summary>Plateau pressure, cmH2O.</summary>
    [Meaning("Plateau pressure, cmH2O; used where the driving pressure is not given.")]
    [Number(2, 70, "cm[H2O]", UsualSd = 1)]
    public Measurement? PlateauPressureCmH2O { get; init; }

    /// <summary>Driving pressure: plateau less PEEP, cmH2O.</summary>
    [Meaning("Driving pressure, plateau less PEEP, cmH2O.")]
    [Number(0, 50, "cm[H2O]", UsualSd = 1)]
    public Measurement? DrivingPressureCmH2O { get; init; }

    /// <summary>Tidal volume, mL.</summary>
    [Meaning("Tidal volume, mL; gives the alveolar ventilation on support.")]
    [Number(2, 2000, "mL", UsualSd = 20)]
    public Measurement? TidalVolumeMl { get; init; }

    /// <summary>Change of pleural (oesophageal) pressure in inspiration, mmHg.</summary>
    [Meaning("Change of pleural or oesophageal pressure in inspiration, mmHg: negative when the patient breathes.")]
    [Number(-25, 25, "mm[Hg]", UsualSd = 1)]
    public Measurement? PleuralSwingMmHg { get; init; }

    /// <summary>Inspired oxygen fraction on support.</summary>
    [Meaning("Inspired oxygen fraction now; that of the blood section is taken when left out.")]
    [Number(0.21, 1, "1", UsualSd = 0.02)]
    public Measurement? InspiredOxygenFraction { get; init; }
}
