using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>Where the probe stands.</summary>
public sealed record ScenePlane
{
    /// <summary>Middle of the face.</summary>
    [Meaning("Middle of the probe's face.")]
    public required SceneVector Origin { get; init; }

    /// <summary>The way it looks.</summary>
    [Meaning("The way the probe looks.")]
    public required SceneVector Direction { get; init; }

    /// <summary>Roll.</summary>
    [Meaning("Roll about the direction; at 0 the picture's right lies as near to the head (z) as the direction allows, or to the left where it looks along z.")]
    [Number(-360, 360, "deg")]
    public double RollDeg { get; init; }
}
