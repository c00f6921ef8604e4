using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>What moves in a loop.</summary>
public sealed record SceneMotionSection
{
    /// <summary>Frames a second.</summary>
    [Meaning("Frames a second; 10 where left out.")]
    [Number(1, 50, "1/s")]
    public double FramesPerSecond { get; init; } = 10;

    /// <summary>Breaths.</summary>
    [Meaning("Breaths a minute; 0 for none.")]
    [Number(0, 60, "/min")]
    public double BreathsPerMin { get; init; }

    /// <summary>Way of a breath.</summary>
    [Meaning("Way of everything under the probe from the end of one breath to its top; at most 50 mm.")]
    public SceneVector? BreathMm { get; init; }

    /// <summary>Narrowing by the breath.</summary>
    [Meaning("Share by which the vessel's radius is less at the top of the breath.")]
    [Number(0, 0.95, "1")]
    public double BreathNarrowing { get; init; }

    /// <summary>Beats.</summary>
    [Meaning("Heartbeats a minute; 0 for none.")]
    [Number(0, 250, "/min")]
    public double BeatsPerMin { get; init; }

    /// <summary>Narrowing by the beat.</summary>
    [Meaning("Share by which the vessel's radius is less once a beat.")]
    [Number(0, 0.5, "1")]
    public double BeatNarrowing { get; init; }

    /// <summary>Speed of the wire.</summary>
    [Meaning("Speed at which the wire goes in; negative outwards.")]
    [Number(-100, 100, "mm/s")]
    public double WireMmPerS { get; init; }
}
