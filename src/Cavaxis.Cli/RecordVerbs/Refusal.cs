using Cavaxis.Cli.Output;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;
using Cavaxis.Records.People;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>The words of refusals: one for each kind, so that nothing is told by their differing.</summary>
internal static class Refusal
{
    /// <summary>Name and password do not belong together, or the name is locked: the words are the same.</summary>
    public static CommandFaultException NotSignedIn() => new(new CommandFault(
        "notSignedIn", "--as", "name and password that do not belong together, or a name that is locked", "the name and password of someone registered and not closed out",
        "Try again; after five failures in 15 minutes a name is locked for 15 minutes. An administrator can unlock it."));

    /// <summary>Refuses what may not be done in a programme or with the store.</summary>
    /// <param name="decision">What was decided.</param>
    /// <param name="what">What it was about, such as "programme".</param>
    /// <param name="given">What was given for it.</param>
    /// <exception cref="CommandFaultException">It was not granted.</exception>
    public static void Unless(AccessDecision decision, string what, string given)
    {
        if (decision != AccessDecision.Granted)
        {
            throw decision == AccessDecision.NotAllowed ? NotAllowed(what) : NotThere(what, given);
        }
    }

    /// <summary>Gives what was granted.</summary>
    /// <typeparam name="T">What it is.</typeparam>
    /// <param name="answer">The answer.</param>
    /// <param name="patient">The patient as given.</param>
    /// <returns>What was asked for.</returns>
    /// <exception cref="CommandFaultException">It was not granted.</exception>
    public static T Granted<T>(PatientAnswer<T> answer, string patient)
        where T : class
    {
        Unless(answer.Decision, "patient", patient);
        return answer.Value!;
    }

    /// <summary>Refuses a change to people that was not done.</summary>
    /// <param name="outcome">What became of it.</param>
    /// <param name="name">The person's name to sign in with.</param>
    /// <exception cref="CommandFaultException">It was not done.</exception>
    public static void Unless(PeopleOutcome outcome, string name)
    {
        CommandFaultException? refused = outcome switch
        {
            PeopleOutcome.Done => null,
            PeopleOutcome.NotAllowed => NotAllowed("person"),
            PeopleOutcome.NotThere => NotThere("person or programme", name),
            PeopleOutcome.ChangedMeanwhile => Of(outcome, name, "a person that no one else changes at the same time", "Look again and repeat it."),
            PeopleOutcome.NameTaken => Of(outcome, name, "a name that is not taken", "Take another name."),
            _ => Of(outcome, name, "a programme that keeps an administrator", "Give the role to someone else first."),
        };
        if (refused is not null)
        {
            throw refused;
        }
    }

    /// <summary>The role does not allow it.</summary>
    /// <param name="what">What it was about.</param>
    /// <returns>The refusal.</returns>
    public static CommandFaultException NotAllowed(string what) => new(new CommandFault(
        "notAllowed", what, "not for your role", "a role that may do this (docs/models/records.md)", "Ask someone who has it."));

    /// <summary>There is no such thing for whoever asked; whether it exists elsewhere is not told.</summary>
    private static CommandFaultException NotThere(string what, string given) => new(new CommandFault(
        "notThere", what, InputFault.Shown(given), "one of your programmes", "Check the name; `patient list` and `people list` tell those you may see."));

    private static CommandFaultException Of(PeopleOutcome outcome, string name, string accepted, string remedy) =>
        new(new CommandFault(CommandFault.CodeOf(outcome), "person", InputFault.Shown(name), accepted, remedy));
}
