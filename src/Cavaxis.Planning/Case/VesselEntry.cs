using Cavaxis.Anatomy.Body;

namespace Cavaxis.Planning.Case;

/// <summary>One vessel on one side as the ultrasound survey saw it.</summary>
public sealed record VesselEntry
{
    /// <summary>Which vessel.</summary>
    [Meaning("Which vessel.")]
    public required VesselName Vessel { get; init; }

    /// <summary>Which side.</summary>
    [Meaning("The patient's own side.")]
    public required BodySide Side { get; init; }

    /// <summary>Inner diameter, mm.</summary>
    [Meaning("Inner diameter at the intended puncture site, not compressed, mm.")]
    [Number(0.5, 45, "mm", UsualSd = 0.7)]
    public Measurement? DiameterMm { get; init; }

    /// <summary>Depth of the vessel's middle under the skin, mm.</summary>
    [Meaning("Depth of the vessel's middle under the skin, mm.")]
    [Number(1, 150, "mm", UsualSd = 1)]
    public Measurement? DepthMm { get; init; }

    /// <summary>Whether it is open.</summary>
    [Meaning("Whether it is open.")]
    public Patency Patency { get; init; }

    /// <summary>Thrombus inside it.</summary>
    [Meaning("Thrombus inside it.")]
    public Finding Thrombus { get; init; }

    /// <summary>How the person made sure which vessel it is.</summary>
    [Meaning("How the person made sure that it is the vein or the artery it is taken for.")]
    [Text(5)]
    public IReadOnlyList<VesselConfirmation> ConfirmedBy { get; init; } = [];
}
