using Cavaxis.Records.Events;

namespace Cavaxis.Records.Access;

/// <summary>Decides from values alone; knows no store, clock or screen.</summary>
public static class AccessRule
{
    /// <summary>May a person do something in a programme?</summary>
    /// <param name="person">Who.</param>
    /// <param name="verb">What.</param>
    /// <param name="programme">Programme of the thing; null where there is no such thing.</param>
    /// <returns>The decision. A thing of a programme in which the person has no role is decided as one that does not exist.</returns>
    public static AccessDecision Decide(Person person, Verb verb, Identifier? programme)
    {
        ArgumentNullException.ThrowIfNull(person);
        return programme is null || person.RoleIn(programme) is not Role role
            ? AccessDecision.NotThere
            : RoleTable.Allows(role, verb) ? AccessDecision.Granted : AccessDecision.NotAllowed;
    }
}
