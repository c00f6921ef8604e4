namespace Cavaxis.Quantities.Faults;

/// <summary>What kind of fault an input has. The code is stable: programs and tests rely on it, not on the wording.</summary>
public enum FaultCode
{
    /// <summary>The file does not exist or cannot be opened.</summary>
    UnreadableFile,

    /// <summary>The file is larger than the tool reads.</summary>
    FileTooLarge,

    /// <summary>The bytes are not UTF-8 text.</summary>
    WrongEncoding,

    /// <summary>The text breaks the grammar of its format.</summary>
    MalformedText,

    /// <summary>Objects or lists are nested deeper than any case needs.</summary>
    NestedTooDeep,

    /// <summary>A field stands twice in one object.</summary>
    DuplicateField,

    /// <summary>A field that the format does not know.</summary>
    UnknownField,

    /// <summary>A field that must be there is not.</summary>
    MissingField,

    /// <summary>A value of another kind than the field takes.</summary>
    WrongKind,

    /// <summary>A number outside the accepted range, or not finite.</summary>
    OutOfRange,

    /// <summary>A word that is not one of the accepted words.</summary>
    NotAChoice,

    /// <summary>A text longer or a list longer than accepted, or empty where it may not be.</summary>
    WrongLength,

    /// <summary>Two values that cannot both be true.</summary>
    Contradiction,

    /// <summary>A version of the format that this program does not read.</summary>
    UnsupportedVersion,

    /// <summary>Too few or too badly spread points to fit.</summary>
    TooFewPoints,

    /// <summary>An identifier that names nothing.</summary>
    NotFound,

    /// <summary>A command-line option or argument that cannot be used.</summary>
    BadOption,
}
