namespace Cavaxis.Planning.Json;

/// <summary>What a field of an input record takes.</summary>
public enum FieldKind
{
    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A whole number.</summary>
    WholeNumber,

    /// <summary>A number.</summary>
    Number,

    /// <summary>A number with its error.</summary>
    Measurement,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>One word of an enum.</summary>
    Word,

    /// <summary>Another record.</summary>
    Record,

    /// <summary>A list of records, words or texts.</summary>
    List,
}
