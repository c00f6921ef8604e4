using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>The device and how it lies.</summary>
public sealed record SceneDevice
{
    /// <summary>Identifier of the cannula.</summary>
    [Meaning("Identifier of a cannula with one lumen in the catalogue.")]
    [Text(100)]
    public required string Cannula { get; init; }

    /// <summary>What of it is in.</summary>
    [Meaning("The wire alone, cannula with introducer over the wire, cannula alone, or cannula with a wire put back through it.")]
    public required AssemblyState State { get; init; }

    /// <summary>The curve it lies along.</summary>
    [Meaning("Points that the device runs through, from outside towards the tip; carried on straight beyond the last.")]
    [Text(200)]
    public required IReadOnlyList<SceneVector> Curve { get; init; }

    /// <summary>Where the tip lies.</summary>
    [Meaning("Length along the curve at which the cannula's tip lies, or would lie where the wire is alone.")]
    [Number(0, 2000, "mm")]
    public required double TipMm { get; init; }

    /// <summary>Diameter of the wire.</summary>
    [Meaning("Diameter of the guide wire; 0.97 mm where left out.")]
    [Number(0.2, 2, "mm")]
    public double WireDiameterMm { get; init; } = 0.97;

    /// <summary>How far the wire reaches.</summary>
    [Meaning("How far the wire reaches beyond the tip; 80 mm where left out.")]
    [Number(-300, 600, "mm")]
    public double WireBeyondTipMm { get; init; } = 80;

    /// <summary>How far the introducer reaches.</summary>
    [Meaning("How far the introducer reaches beyond the tip; 30 mm where left out.")]
    [Number(5, 80, "mm")]
    public double IntroducerBeyondTipMm { get; init; } = 30;

    /// <summary>Turn about itself.</summary>
    [Meaning("Turn of the cannula about itself, which turns its holes; 0 where left out.")]
    [Number(-360, 360, "deg")]
    public double TurnDeg { get; init; }

    /// <summary>The wire in its wall.</summary>
    [Meaning("The wire wound into the wall; a plain wall where left out.")]
    public SceneWinding? Winding { get; init; }
}
