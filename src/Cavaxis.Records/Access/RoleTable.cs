using System.Collections.Frozen;

namespace Cavaxis.Records.Access;

/// <summary>
/// Which role may do what: a table and nothing else. Common practice, no source: whoever keeps people and machines has no business in the
/// records of patients, and whoever treats does not give themselves roles.
/// </summary>
public static class RoleTable
{
    private static readonly FrozenDictionary<Role, FrozenSet<Verb>> Allowed = new Dictionary<Role, FrozenSet<Verb>>
    {
        [Role.Reader] = Set(Verb.ReadPatient),
        [Role.Clinician] = Set(Verb.ReadPatient, Verb.AdmitPatient, Verb.Record, Verb.Correct, Verb.ShareForOpinion),
        [Role.Lead] = Set(
            Verb.ReadPatient, Verb.AdmitPatient, Verb.Record, Verb.Correct, Verb.ShareForOpinion, Verb.TransferPatient, Verb.ReadOutcomes, Verb.ChangeRules, Verb.ReadAudit),
        [Role.Administrator] = Set(Verb.KeepPeople, Verb.KeepStore, Verb.ReadAudit),
    }.ToFrozenDictionary();

    /// <summary>True where the role may do it.</summary>
    /// <param name="role">The role.</param>
    /// <param name="verb">What is to be done.</param>
    /// <returns>Whether it may.</returns>
    public static bool Allows(Role role, Verb verb) => Allowed.TryGetValue(role, out FrozenSet<Verb>? verbs) && verbs.Contains(verb);

    private static FrozenSet<Verb> Set(params Verb[] verbs) => verbs.ToFrozenSet();
}
