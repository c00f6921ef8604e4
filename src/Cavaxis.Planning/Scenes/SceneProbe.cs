using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>The probe.</summary>
public sealed record SceneProbe
{
    /// <summary>Layout of the lines.</summary>
    [Meaning("Parallel lines, lines square to a curved face, or lines steered from one point.")]
    public required ProbeKind Kind { get; init; }

    /// <summary>Centre frequency.</summary>
    [Meaning("Centre frequency.")]
    [Number(1, 20, "MHz")]
    public required double FrequencyMHz { get; init; }

    /// <summary>Depth shown.</summary>
    [Meaning("Depth shown.")]
    [Number(10, 250, "mm")]
    public required double DepthMm { get; init; }

    /// <summary>Focus of the sent wave.</summary>
    [Meaning("Depth on which the sent wave is focused.")]
    [Number(5, 300, "mm")]
    public required double FocusMm { get; init; }

    /// <summary>Aperture.</summary>
    [Meaning("Width of the active aperture.")]
    [Number(2, 60, "mm")]
    public required double ApertureMm { get; init; }

    /// <summary>Width of a linear probe.</summary>
    [Meaning("Width of the picture of a linear probe; 40 mm where left out.")]
    [Number(10, 100, "mm")]
    public double WidthMm { get; init; } = 40;

    /// <summary>Radius of a convex probe.</summary>
    [Meaning("Radius of the face of a convex probe; 50 mm where left out.")]
    [Number(5, 100, "mm")]
    public double RadiusMm { get; init; } = 50;

    /// <summary>Angle of the sector.</summary>
    [Meaning("Angle of the sector of a convex or phased probe; 70 degrees where left out.")]
    [Number(20, 120, "deg")]
    public double AngleDeg { get; init; } = 70;

    /// <summary>Bandwidth.</summary>
    [Meaning("Two-way bandwidth at half amplitude over the centre frequency; 0.6 where left out.")]
    [Number(0.1, 1, "1")]
    public double Bandwidth { get; init; } = 0.6;

    /// <summary>Height of the elements.</summary>
    [Meaning("Height of the elements, which sets the thickness of the slice; 7 mm where left out.")]
    [Number(1, 30, "mm")]
    public double SliceApertureMm { get; init; } = 7;

    /// <summary>Depth of the thinnest slice.</summary>
    [Meaning("Depth at which the slice is thinnest; 50 mm where left out.")]
    [Number(5, 300, "mm")]
    public double SliceFocusMm { get; init; } = 50;
}
