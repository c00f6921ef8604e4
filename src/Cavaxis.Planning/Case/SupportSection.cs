namespace Cavaxis.Planning.Case;

/// <summary>What the support is for and what it should reach.</summary>
public sealed record SupportSection
{
    /// <summary>What the support is for; null when the case does not say.</summary>
    [Meaning("What the support is for; every configuration is considered when this is left out.")]
    public SupportGoal? Goal { get; init; }

    /// <summary>Arterial saturation to reach, percent.</summary>
    [Meaning("Arterial oxygen saturation to reach, percent; the programme's default is used when left out.")]
    [Number(75, 99, "%")]
    public double? TargetSaturationPercent { get; init; }

    /// <summary>Total systemic flow to reach, L/min/m².</summary>
    [Meaning("Total systemic flow index to reach, L/min/m2; the programme's default is used when left out.")]
    [Number(1, 5, "L/min/m2")]
    public double? TargetCardiacIndexLPerMinPerM2 { get; init; }

    /// <summary>Pump flow asked for, L/min, where the person sets it.</summary>
    [Meaning("Pump flow asked for, L/min; calculated from the patient's needs when left out.")]
    [Number(0.1, 8, "L/min")]
    public double? FlowLPerMin { get; init; }
}
