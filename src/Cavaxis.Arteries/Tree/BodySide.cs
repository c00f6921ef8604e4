namespace Cavaxis.Arteries.Tree;

/// <summary>Side of the patient.</summary>
public enum BodySide
{
    /// <summary>The patient's right.</summary>
    Right,

    /// <summary>The patient's left.</summary>
    Left,
}
