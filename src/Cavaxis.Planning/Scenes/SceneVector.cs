using Cavaxis.Planning.Case;

namespace Cavaxis.Planning.Scenes;

/// <summary>A point or a direction of a scene, in the patient's coordinates.</summary>
[Meaning("A point in mm, or a direction of any length: x to the patient's left, y to the back, z to the head.")]
public sealed record SceneVector
{
    /// <summary>To the patient's left.</summary>
    [Number(-2000, 2000, "mm")]
    public required double X { get; init; }

    /// <summary>To the patient's back.</summary>
    [Number(-2000, 2000, "mm")]
    public required double Y { get; init; }

    /// <summary>To the patient's head.</summary>
    [Number(-2000, 2000, "mm")]
    public required double Z { get; init; }
}
