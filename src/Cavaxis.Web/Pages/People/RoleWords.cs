using Cavaxis.Records.Access;

namespace Cavaxis.Web.Pages.People;

/// <summary>Plain words for roles and what they may do, read from the table that decides.</summary>
internal static class RoleWords
{
    /// <summary>The role.</summary>
    public static string Of(Role role) => role.ToString().ToLowerInvariant();

    /// <summary>All that a role may do.</summary>
    public static string May(Role role) => string.Join(", ", Enum.GetValues<Verb>().Where(verb => RoleTable.Allows(role, verb)).Select(Of)) + ".";

    private static string Of(Verb verb) => verb switch
    {
        Verb.ReadPatient => "read patients",
        Verb.AdmitPatient => "admit patients",
        Verb.Record => "write down",
        Verb.Correct => "put right and withdraw",
        Verb.TransferPatient => "give a patient over to another programme",
        Verb.ShareForOpinion => "ask for a second opinion",
        Verb.ReadOutcomes => "read outcomes of the programme",
        Verb.ChangeRules => "change the programme's rules",
        Verb.ReadAudit => "read who read and wrote what",
        Verb.KeepPeople => "keep people and roles",
        Verb.KeepStore => "verify, back up and restore the record",
        _ => throw new ArgumentOutOfRangeException(nameof(verb), verb, "Not a verb."),
    };
}
