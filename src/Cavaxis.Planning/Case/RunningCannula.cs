using Cavaxis.Anatomy.Body;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Planning.Case;

/// <summary>One cannula as it lies.</summary>
public sealed record RunningCannula
{
    /// <summary>What it does.</summary>
    [Meaning("What it does.")]
    public required CannulaRole Role { get; init; }

    /// <summary>Identifier in the catalogue.</summary>
    [Meaning("Identifier in the catalogue of devices.")]
    [Text(100)]
    public required string Device { get; init; }

    /// <summary>Vessel it enters; null when not said.</summary>
    [Meaning("The vessel it enters.")]
    public AccessRoute? Route { get; init; }

    /// <summary>Side of the body; null when not said.</summary>
    [Meaning("The patient's own side.")]
    public BodySide? Side { get; init; }

    /// <summary>Length inside the body, cm.</summary>
    [Meaning("Length from the skin to the tip, cm.")]
    [Number(1, 70, "cm", UsualSd = 1)]
    public Measurement? DepthCm { get; init; }

    /// <summary>Turn of the return port of a dual-lumen cannula, degrees.</summary>
    [Meaning("Turn of a dual-lumen return port away from the tricuspid valve, degrees; positive towards the back of the patient.")]
    [Number(-180, 180, "deg", UsualSd = 15)]
    public Measurement? RotationDeg { get; init; }
}
