using Cavaxis.Records.People;

namespace Cavaxis.Web.Pages.People;

/// <summary>What became of a change to people, in words.</summary>
internal static class PeopleWords
{
    /// <summary>The words.</summary>
    public static string Of(PeopleOutcome outcome) => outcome switch
    {
        PeopleOutcome.Done => "Done, and kept in the record.",
        PeopleOutcome.NotThere => "There is no such person in your programmes.",
        PeopleOutcome.NotAllowed => "Your role does not allow this.",
        PeopleOutcome.ChangedMeanwhile => "Someone else changed this person at the same time. Look again.",
        PeopleOutcome.NameTaken => "This name to sign in with is taken. Choose another.",
        PeopleOutcome.LastAdministrator => "The programme would be left without an administrator. Give someone else that role first.",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "Not an outcome."),
    };
}
