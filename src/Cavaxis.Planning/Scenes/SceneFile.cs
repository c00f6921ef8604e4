using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>A scene for synthetic ultrasound, as its file gives it.</summary>
[Meaning("A scene for synthetic ultrasound: what is looked at, from where, and with what probe.")]
public sealed record SceneFile
{
    /// <summary>Version of the format this program reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Version of the format.</summary>
    [Meaning("Version of the scene format.")]
    [Number(1, 1, "1")]
    public required int CavaxisScene { get; init; }

    /// <summary>Title for people.</summary>
    [Meaning("A title for people; no names of real persons or places.")]
    [Text(200)]
    public string? Title { get; init; }

    /// <summary>True when invented.</summary>
    [Meaning("True when the scene is invented for demonstration or teaching.")]
    public bool Invented { get; init; }

    /// <summary>Free notes.</summary>
    [Meaning("Free notes; not used in any calculation.")]
    [Text(2000)]
    public string? Notes { get; init; }

    /// <summary>Seed of the scatterers.</summary>
    [Meaning("Seed of every scatterer; the same scene and seed give the same picture. 1 where left out.")]
    [Number(0, 2000000000, "1")]
    public int Seed { get; init; } = 1;

    /// <summary>Surroundings.</summary>
    [Meaning("What lies about the device.")]
    public required SceneSurroundings Surroundings { get; init; }

    /// <summary>Device.</summary>
    [Meaning("The device and how it lies; leave out for none.")]
    public SceneDevice? Device { get; init; }

    /// <summary>Plane.</summary>
    [Meaning("Where the probe stands and how it looks.")]
    public required ScenePlane Plane { get; init; }

    /// <summary>Probe.</summary>
    [Meaning("The probe.")]
    public required SceneProbe Probe { get; init; }

    /// <summary>Display.</summary>
    [Meaning("How echoes become grey.")]
    public SceneDisplay Display { get; init; } = new();

    /// <summary>Motion.</summary>
    [Meaning("What moves where a loop is made.")]
    public SceneMotionSection Motion { get; init; } = new();
}
