namespace Cavaxis.Planning.Case;

/// <summary>Imaging and tools on hand.</summary>
public sealed record ResourceSection
{
    /// <summary>Transoesophageal ultrasound.</summary>
    [Meaning("Transoesophageal ultrasound with someone who can use it.")]
    public Availability TransoesophagealEcho { get; init; }

    /// <summary>Transthoracic ultrasound.</summary>
    [Meaning("Transthoracic ultrasound with someone who can use it.")]
    public Availability TransthoracicEcho { get; init; }

    /// <summary>Vascular ultrasound.</summary>
    [Meaning("Vascular ultrasound for puncture.")]
    public Availability VascularUltrasound { get; init; }

    /// <summary>Fluoroscopy.</summary>
    [Meaning("Fluoroscopy at the place of cannulation.")]
    public Availability Fluoroscopy { get; init; }

    /// <summary>Hybrid room.</summary>
    [Meaning("Hybrid operating room.")]
    public Availability HybridRoom { get; init; }

    /// <summary>Stiff wire.</summary>
    [Meaning("Stiff guide wire of sufficient length.")]
    public Availability StiffWire { get; init; }

    /// <summary>Vascular surgeon.</summary>
    [Meaning("Vascular or cardiac surgeon at hand.")]
    public Availability VascularSurgeon { get; init; }
}
