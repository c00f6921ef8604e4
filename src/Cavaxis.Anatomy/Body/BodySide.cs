namespace Cavaxis.Anatomy.Body;

/// <summary>Side of the body, the patient's own.</summary>
public enum BodySide
{
    /// <summary>The patient's right.</summary>
    Right,

    /// <summary>The patient's left.</summary>
    Left,
}
