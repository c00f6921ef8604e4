namespace Cavaxis.Planning.Case;

/// <summary>Support as it runs. Without this section the circulation is computed without a circuit.</summary>
public sealed record RunningSection
{
    /// <summary>How it is connected; null when nothing runs.</summary>
    [Meaning("How the running circuit is connected; leave the section out when none runs.")]
    public RunningConfiguration? Configuration { get; init; }

    /// <summary>The cannulae.</summary>
    [Meaning("The cannulae as they lie.")]
    [Text(8)]
    public IReadOnlyList<RunningCannula> Cannulae { get; init; } = [];

    /// <summary>Pump flow, L/min.</summary>
    [Meaning("Pump flow, L/min.")]
    [Number(0.05, 10, "L/min", UsualSd = 0.1)]
    public Measurement? FlowLPerMin { get; init; }

    /// <summary>Pump speed, per minute.</summary>
    [Meaning("Pump speed, revolutions per minute; sets the pump where the flow is not given, else an observation.")]
    [Number(100, 20000, "/min", UsualSd = 20)]
    public Measurement? SpeedPerMin { get; init; }

    /// <summary>Sweep gas flow, L/min.</summary>
    [Meaning("Sweep gas flow, L/min.")]
    [Number(0, 20, "L/min", UsualSd = 0.1)]
    public Measurement? SweepLPerMin { get; init; }

    /// <summary>Oxygen fraction of the sweep gas.</summary>
    [Meaning("Oxygen fraction of the sweep gas, 0.21 to 1.")]
    [Number(0.21, 1, "1", UsualSd = 0.01)]
    public Measurement? SweepOxygenFraction { get; init; }

    /// <summary>Share of the flow that returns to an artery, in veno-arterio-venous support.</summary>
    [Meaning("Share of the pump flow that returns to the artery in veno-arterio-venous support.")]
    [Number(0, 1, "1", UsualSd = 0.05)]
    public Measurement? ArterialShareOfReturn { get; init; }

    /// <summary>Identifier of the pump.</summary>
    [Meaning("Identifier of the pump in the catalogue; the smallest that suffices when left out.")]
    [Text(100)]
    public string? Pump { get; init; }

    /// <summary>Identifier of the membrane lung.</summary>
    [Meaning("Identifier of the membrane lung in the catalogue; the smallest that suffices when left out.")]
    [Text(100)]
    public string? MembraneLung { get; init; }

    /// <summary>Volume of a balloon pump, mL.</summary>
    [Meaning("Volume of a balloon pump in the descending aorta, mL.")]
    [Number(0, 60, "mL")]
    public double? BalloonPumpMl { get; init; }

    /// <summary>Flow of a left ventricular vent, L/min.</summary>
    [Meaning("Flow of a left ventricular vent into the drainage line, L/min.")]
    [Number(0, 3, "L/min")]
    public double? VentFlowLPerMin { get; init; }

    /// <summary>Flow of a pump across the aortic valve, L/min.</summary>
    [Meaning("Flow of a pump from the left ventricle into the aorta, L/min.")]
    [Number(0, 6, "L/min")]
    public double? TransvalvularFlowLPerMin { get; init; }

    /// <summary>Diameter of an opening between the atria, mm.</summary>
    [Meaning("Diameter of an opening made between the atria, mm.")]
    [Number(0, 19, "mm")]
    public double? SeptalOpeningMm { get; init; }
}
