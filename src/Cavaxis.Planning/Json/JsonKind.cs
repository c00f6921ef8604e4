namespace Cavaxis.Planning.Json;

/// <summary>Kind of a JSON value.</summary>
public enum JsonKind
{
    /// <summary>The word null.</summary>
    Null,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A list in square brackets.</summary>
    List,

    /// <summary>An object in braces.</summary>
    Object,
}
