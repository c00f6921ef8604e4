namespace Cavaxis.Course.FollowUp;

/// <summary>How an examination after support stands.</summary>
public enum DueState
{
    /// <summary>Its time has not come.</summary>
    Ahead,

    /// <summary>It is due.</summary>
    Due,

    /// <summary>Its time has passed.</summary>
    Overdue,

    /// <summary>Done in time.</summary>
    Done,

    /// <summary>Done after its time.</summary>
    DoneLate,
}
