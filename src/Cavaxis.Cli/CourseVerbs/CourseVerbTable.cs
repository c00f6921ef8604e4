using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>The verbs of patients' courses and of a programme's outcomes.</summary>
internal static class CourseVerbTable
{
    /// <summary>Adds them to the command line.</summary>
    /// <param name="configuration">The command line.</param>
    public static void AddTo(IConfigurator configuration)
    {
        configuration.AddBranch("course", static branch =>
        {
            branch.SetDescription("A patient's course: case, plan, run sheet, cannulae, support, readings, weaning, removal, follow-up.");
            branch.AddCommand<CourseShowCommand>("show").WithDescription("Show how a patient is now, and what happened.");
            AddPlacing(branch);
            AddRunning(branch);
            AddEnding(branch);
            branch.AddCommand<CourseEnterCommand>("enter").WithDescription("Write down anticoagulation, imaging or a note.");
            branch.AddCommand<CourseCorrectCommand>("correct").WithDescription("Put an entry right; the earlier one stays visible.");
            branch.AddCommand<CourseWithdrawCommand>("withdraw").WithDescription("Take an entry back; it stays visible.");
        });
    }

    /// <summary>Adds those about a programme to its branch.</summary>
    /// <param name="branch">The branch.</param>
    public static void AddProgramme(IConfigurator<CommandSettings> branch) =>
        branch.AddCommand<ProgrammeOutcomesCommand>("outcomes").WithDescription("Outcomes with intervals, case mix, cumulative sums; small numbers are called small.");

    private static void AddPlacing(IConfigurator<CommandSettings> branch)
    {
        branch.AddCommand<CourseCaseCommand>("case").WithDescription("Save a case file as the case of the patient.");
        branch.AddCommand<CoursePlanCommand>("plan").WithDescription("Choose a plan of the case; its steps become the run sheet.");
        branch.AddCommand<CourseStepCommand>("step").WithDescription("Close a step of the run sheet, or pass it over with a reason.");
        branch.AddCommand<CoursePlaceCommand>("place").WithDescription("Write down that a cannula was placed.");
        branch.AddCommand<CourseMoveCommand>("move").WithDescription("Write down that a cannula was moved.");
        branch.AddCommand<CoursePositionCommand>("position").WithDescription("Write down where a cannula was seen, and show what changed.");
        branch.AddCommand<CoursePositionsCommand>("positions").WithDescription("Show where the cannulae lie and what changed.");
    }

    private static void AddRunning(IConfigurator<CommandSettings> branch)
    {
        branch.AddCommand<CourseStartCommand>("start").WithDescription("Write down that support began.");
        branch.AddCommand<CourseChangeCommand>("change").WithDescription("Write down that the circuit was changed.");
        branch.AddCommand<CourseStopCommand>("stop").WithDescription("Write down that support ended.");
        branch.AddCommand<CourseObserveCommand>("observe").WithDescription("Write down what was read, with its unit.");
        branch.AddCommand<CourseImportCommand>("import").WithDescription("Take a CSV file of monitor or circuit data in.");
        branch.AddCommand<CourseExplainCommand>("explain").WithDescription("What changed, what may be behind it, and what to look at next.");
        branch.AddCommand<CourseRecirculationCommand>("recirculation").WithDescription("Recirculation by saturation, content and dilution, with its error.");
        branch.AddCommand<CourseSupportCommand>("support").WithDescription("Effective flow, oxygen delivered and consumed, membrane lung.");
        branch.AddBranch<CommandSettings>("complication", static one =>
        {
            one.SetDescription("What went wrong.");
            one.AddCommand<ComplicationSeenCommand>("seen").WithDescription("Write down that something went wrong.");
            one.AddCommand<ComplicationOverCommand>("over").WithDescription("Write down how it ended.");
        });
    }

    private static void AddEnding(IConfigurator<CommandSettings> branch)
    {
        branch.AddBranch<CommandSettings>("wean", static one =>
        {
            one.SetDescription("Trials of weaning against published criteria.");
            one.AddCommand<WeanStartCommand>("start").WithDescription("Write down that a trial began.");
            one.AddCommand<WeanStepCommand>("step").WithDescription("Write down a step, and show how the trial stands.");
            one.AddCommand<WeanEndCommand>("end").WithDescription("Write down that the trial ended, and show what it showed.");
            one.AddCommand<WeanShowCommand>("show").WithDescription("Show the last trial against each criterion.");
        });
        branch.AddCommand<CourseRemoveCommand>("remove").WithDescription("Write down that a cannula was taken out.");
        branch.AddBranch<CommandSettings>("follow-up", static one =>
        {
            one.SetDescription("Examinations after support.");
            one.AddCommand<FollowUpShowCommand>("show").WithDescription("Show what is due.");
            one.AddCommand<FollowUpPlanCommand>("plan").WithDescription("Plan an examination.");
            one.AddCommand<FollowUpFoundCommand>("found").WithDescription("Write down what one found.");
        });
        branch.AddCommand<CourseOutcomeCommand>("outcome").WithDescription("Write down what became of the patient.");
    }
}
