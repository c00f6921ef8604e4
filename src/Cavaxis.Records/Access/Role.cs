namespace Cavaxis.Records.Access;

/// <summary>What a person is in a programme. A person has at most one role in each.</summary>
public enum Role
{
    /// <summary>Looks on: reads patients of the programme.</summary>
    Reader,

    /// <summary>Treats: reads, admits, writes down, corrects, shares.</summary>
    Clinician,

    /// <summary>Leads the programme: all that a clinician does, and rules, outcomes and the audit.</summary>
    Lead,

    /// <summary>Keeps people, roles and the store; reads no patient.</summary>
    Administrator,
}
