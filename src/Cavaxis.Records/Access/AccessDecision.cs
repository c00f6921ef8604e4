namespace Cavaxis.Records.Access;

/// <summary>Whether a person may do something.</summary>
public enum AccessDecision
{
    /// <summary>There is no such thing for this person: it does not exist, or lies outside their programmes. The two are never told apart.</summary>
    NotThere,

    /// <summary>It lies in a programme of theirs, but their role does not allow it.</summary>
    NotAllowed,

    /// <summary>They may.</summary>
    Granted,
}
