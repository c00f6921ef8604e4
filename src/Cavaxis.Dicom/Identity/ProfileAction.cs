namespace Cavaxis.Dicom.Identity;

/// <summary>What becomes of an attribute (PS3.15 table E.1-1a).</summary>
public enum ProfileAction
{
    /// <summary>X: it is removed.</summary>
    Remove,

    /// <summary>Z: it is emptied.</summary>
    Empty,

    /// <summary>D: a dummy takes the place of its value.</summary>
    Dummy,

    /// <summary>U: another identifier takes its place, the same wherever the old one stands.</summary>
    Replace,

    /// <summary>X/Z/U*: it is kept, and the identifiers within are replaced.</summary>
    ReplaceWithin,
}
