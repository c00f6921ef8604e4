using Cavaxis.Imaging.Echo;
using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>What lies about the device.</summary>
public sealed record SceneSurroundings
{
    /// <summary>Kind.</summary>
    [Meaning("A bath of water, a vessel in tissue, or tissue alone.")]
    public required SurroundingsKind Kind { get; init; }

    /// <summary>Middle line of the vessel.</summary>
    [Meaning("Points of the vessel's middle line in their order; only and always for a vessel.")]
    [Text(200)]
    public IReadOnlyList<SceneVector> Axis { get; init; } = [];

    /// <summary>Radius of the lumen.</summary>
    [Meaning("Radius of the vessel's lumen; only and always for a vessel.")]
    [Number(0.5, 40, "mm")]
    public double? RadiusMm { get; init; }

    /// <summary>Thickness of the wall.</summary>
    [Meaning("Thickness of the vessel's wall; 1 mm where left out.")]
    [Number(0, 5, "mm")]
    public double WallMm { get; init; } = 1;

    /// <summary>Unevenness of the tissue.</summary>
    [Meaning("Standard deviation of the slow unevenness of the tissue's scatter; 2 dB where left out.")]
    [Number(0, 12, "dB")]
    public double TissueVariationDb { get; init; } = 2;
}
