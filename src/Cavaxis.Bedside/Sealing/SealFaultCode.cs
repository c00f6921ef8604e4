namespace Cavaxis.Bedside.Sealing;

/// <summary>Why a sealed file is refused. The code is stable: programs and tests rely on it, not on the wording.</summary>
public enum SealFaultCode
{
    /// <summary>The file is not one of this kind.</summary>
    NotAPack,

    /// <summary>Its version or its way of sealing is not one that this program reads.</summary>
    UnsupportedVersion,

    /// <summary>The cost that it asks for deriving the key is outside the bounds.</summary>
    CostOutOfBounds,

    /// <summary>It is shorter or longer than it says: cut off in transit, or something was added.</summary>
    WrongLength,

    /// <summary>It, or what is in it, is larger than is read.</summary>
    TooLarge,

    /// <summary>The passphrase is another, or the file was changed. The two are never told apart.</summary>
    NotOpened,

    /// <summary>It opens, but its contents are not of the form.</summary>
    UnreadableContents,

    /// <summary>It answers another pack.</summary>
    OtherPack,

    /// <summary>This answer is in the record already.</summary>
    AnsweredAlready,
}
