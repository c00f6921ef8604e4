using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>The wire wound into the wall of a cannula.</summary>
public sealed record SceneWinding
{
    /// <summary>Diameter of the wire.</summary>
    [Meaning("Diameter of the wound wire; 0.25 mm where left out (assumption of this project).")]
    [Number(0.05, 1, "mm")]
    public double WireMm { get; init; } = 0.25;

    /// <summary>From turn to turn.</summary>
    [Meaning("Way from turn to turn, at least 1.2 times the wire; 0.6 mm where left out (assumption of this project).")]
    [Number(0.06, 10, "mm")]
    public double PitchMm { get; init; } = 0.6;

    /// <summary>Length without winding.</summary>
    [Meaning("Length at the tip that has no winding; 25 mm where left out (assumption of this project).")]
    [Number(0, 100, "mm")]
    public double PlainTipMm { get; init; } = 25;
}
