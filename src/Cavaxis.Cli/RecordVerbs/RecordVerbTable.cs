using Spectre.Console.Cli;

namespace Cavaxis.Cli.RecordVerbs;

/// <summary>The verbs of the record.</summary>
internal static class RecordVerbTable
{
    /// <summary>Adds them to the command line.</summary>
    /// <param name="configuration">The command line.</param>
    /// <param name="ofPatients">Add further verbs to the branch of patients.</param>
    public static void AddTo(IConfigurator configuration, params IReadOnlyList<Action<IConfigurator<CommandSettings>>> ofPatients)
    {
        configuration.AddBranch("record", static branch =>
        {
            branch.SetDescription("The bedside record as a whole: make, verify, back up, restore, recover.");
            branch.AddCommand<RecordCreateCommand>("create").WithDescription("Make a record with its first administrator.");
            branch.AddCommand<RecordVerifyCommand>("verify").WithDescription("Check every event and link; ends with 1 where anything was altered.");
            branch.AddCommand<RecordAnchorCommand>("anchor").WithDescription("Print the line that proves everything up to now; keep it elsewhere.");
            branch.AddCommand<RecordBackupCommand>("backup").WithDescription("Write the whole record as one file, checked.");
            branch.AddCommand<RecordRestoreCommand>("restore").WithDescription("Make a record of a backup; also the way from a file to a server and back.");
            branch.AddCommand<RecordRecoverCommand>("recover").WithDescription("Bring what is intact of a damaged file into a new record.");
        });
        configuration.AddBranch("people", static branch =>
        {
            branch.SetDescription("Who may sign in, and their roles.");
            branch.AddCommand<PeopleListCommand>("list").WithDescription("List the people of your programmes.");
            branch.AddCommand<PeopleAddCommand>("add").WithDescription("Register someone with a first role and password.");
            branch.AddCommand<PeopleRoleCommand>("role").WithDescription("Give a role in a programme, or end it.");
            branch.AddCommand<PeopleCloseCommand>("close").WithDescription("Close someone out.");
            branch.AddCommand<PeoplePasswordCommand>("password").WithDescription("Set your own password, or that of someone you keep.");
            branch.AddCommand<PeopleUnlockCommand>("unlock").WithDescription("Let a locked name sign in again.");
        });
        configuration.AddBranch("patient", branch =>
        {
            branch.SetDescription("Patients of your programmes.");
            branch.AddCommand<PatientListCommand>("list").WithDescription("List the patients whose records you may read.");
            branch.AddCommand<PatientShowCommand>("show").WithDescription("Show a patient's events.");
            branch.AddCommand<PatientAdmitCommand>("admit").WithDescription("Take a new patient in.");
            branch.AddCommand<PatientAuditCommand>("audit").WithDescription("Show who asked for records of a programme.");
            foreach (Action<IConfigurator<CommandSettings>> more in ofPatients)
            {
                more(branch);
            }
        });
    }
}
