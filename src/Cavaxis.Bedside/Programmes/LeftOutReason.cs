namespace Cavaxis.Bedside.Programmes;

/// <summary>Why a course is not counted in the outcomes of its programme.</summary>
public enum LeftOutReason
{
    /// <summary>Support was not begun, or not written down.</summary>
    NotBegun,

    /// <summary>Support goes on.</summary>
    OnSupport,

    /// <summary>No case of the patient can be read, so that the age is not known.</summary>
    NoAge,
}
