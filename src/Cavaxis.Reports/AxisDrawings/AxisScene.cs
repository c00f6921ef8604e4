namespace Cavaxis.Reports.AxisDrawings;

/// <summary>
/// Everything that the drawing of an axis shows. All positions are mm along the axis, growing toward the feet, from a
/// zero that <see cref="ZeroName"/> names. Segments run from the confluence of the brachiocephalic veins to the confluence
/// of the iliac veins without gaps: superior cava, atrium, inferior cava.
/// </summary>
public sealed record AxisScene
{
    /// <summary>Short name of the drawing.</summary>
    public required string Title { get; init; }

    /// <summary>What the drawing shows, in words, for those who cannot see it.</summary>
    public required string Description { get; init; }

    /// <summary>Name of the zero of the axis, used in "3.1 cm below …".</summary>
    public string ZeroName { get; init; } = "SCAJ";

    /// <summary>The trunk from above downward.</summary>
    public required IReadOnlyList<AxisSegment> Segments { get; init; }

    /// <summary>Landmarks, in any order.</summary>
    public IReadOnlyList<AxisLandmark> Landmarks { get; init; } = [];

    /// <summary>The tricuspid opening; not drawn where null.</summary>
    public TricuspidOpening? Tricuspid { get; init; }

    /// <summary>Skin entries.</summary>
    public IReadOnlyList<SkinEntry> Entries { get; init; } = [];

    /// <summary>Cannulae; none for the anatomy alone.</summary>
    public IReadOnlyList<SceneCannula> Cannulae { get; init; } = [];

    /// <summary>One more sentence under the drawing, such as how the anatomy was found; may be empty.</summary>
    public string Note { get; init; } = string.Empty;

    /// <summary>Median place of the skin entry at a site; none where the scene has none.</summary>
    internal double? SkinOf(EntrySite site) => Entries.FirstOrDefault(e => e.Site == site)?.PositionMm.Median;
}
