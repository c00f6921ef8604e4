namespace Cavaxis.Records.Faults;

/// <summary>What a store refuses. The code is stable: programs and tests rely on it, not on the wording.</summary>
public enum StoreFaultCode
{
    /// <summary>The file or its folder cannot be opened.</summary>
    CannotOpen,

    /// <summary>The store may be read but not written.</summary>
    ReadOnly,

    /// <summary>No room is left; nothing of what was being written is kept, all that was acknowledged is.</summary>
    DiskFull,

    /// <summary>The disk did not take or give the data.</summary>
    DiskFailed,

    /// <summary>The file is damaged.</summary>
    Damaged,

    /// <summary>The file or database is not a store of this program.</summary>
    NotAStore,

    /// <summary>The store was made by a later version of this program.</summary>
    NewerFormat,

    /// <summary>Someone else holds the store for longer than is waited for.</summary>
    Busy,

    /// <summary>The database server does not answer.</summary>
    Unreachable,

    /// <summary>The database server does not accept name or password, or has no such database.</summary>
    NotAdmitted,

    /// <summary>The chain of hashes is broken.</summary>
    BrokenChain,

    /// <summary>Something is there already that would be overwritten.</summary>
    AlreadyThere,

    /// <summary>The database refuses to change or delete what is kept.</summary>
    AppendOnly,
}
