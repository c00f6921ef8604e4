namespace Cavaxis.Records.People;

/// <summary>What became of a change to people.</summary>
public enum PeopleOutcome
{
    /// <summary>Done and kept.</summary>
    Done,

    /// <summary>There is no such person or programme for whoever asked.</summary>
    NotThere,

    /// <summary>Whoever asked has no role that allows it.</summary>
    NotAllowed,

    /// <summary>Someone else changed the same person first; read again.</summary>
    ChangedMeanwhile,

    /// <summary>The name to sign in with is taken.</summary>
    NameTaken,

    /// <summary>The programme would be left without an administrator.</summary>
    LastAdministrator,
}
