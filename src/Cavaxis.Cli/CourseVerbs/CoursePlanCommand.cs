using System.ComponentModel;
using System.Globalization;
using System.Text;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Course.RunSheets;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary><c>course plan</c>: computes the plans of the case in force and chooses one; its steps become the run sheet.</summary>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public sealed class CoursePlanCommand(CommandOutput output, SecretReader secrets) : CourseWritingCommand<CoursePlanCommand.Settings>(output, secrets)
{
    /// <summary>What <c>course plan</c> takes.</summary>
    public sealed class Settings : WritingSettings
    {
        /// <summary>Rank of the plan.</summary>
        [CommandOption("--rank <RANK>")]
        [Description("Rank of the plan in the list that `plan` prints [[1]].")]
        public string Rank { get; init; } = "1";

        /// <summary>Number of anatomies.</summary>
        [CommandOption("--anatomies <COUNT>")]
        [Description("Number of sampled anatomies, 200 to 200000 [[10000]].")]
        public string Anatomies { get; init; } = "10000";

        /// <summary>Leaves out the model of the circulation.</summary>
        [CommandOption("--quick")]
        [Description("Leaves out the model of the circulation.")]
        public bool Quick { get; init; }

        /// <summary>Why this one.</summary>
        [CommandOption("--reason <TEXT>")]
        [Description("Why this one.")]
        public string? Reason { get; init; }
    }

    private protected override async Task<CourseEvent> EventAsync(CourseVisit visit, Settings settings, DateTimeOffset? at)
    {
        int rank = OptionText.Whole(settings.Rank, "--rank", 1, 100);
        int anatomies = OptionText.Whole(settings.Anatomies, "--anatomies", PlanningOptions.FewestAnatomies, PlanningOptions.MostAnatomies);
        Logged<CaseSaved> saved = (await visit.ReadAsync()).Course.Case
            ?? throw OptionText.Wrong("PATIENT", visit.Patient, "a patient with a case", "Save a case first: `course case`.", FaultCode.MissingField);
        CaseFile caseFile = CaseFileReader.Read(Encoding.UTF8.GetBytes(saved.Event.CaseText), "case of the patient");
        PlanningResult result = ProgressNote.While(
            Output, string.Create(CultureInfo.InvariantCulture, $"Planning over {anatomies} anatomies"),
            () => Planner.Plan(caseFile, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Anatomies = anatomies, ChosenRank = rank, Circulation = !settings.Quick }));
        return result.Plans.Count == 0
            ? throw OptionText.Wrong("--rank", settings.Rank, "a rank in the list; no plan can be made with these devices and vessels", "Look with `plan` why not.", FaultCode.NotFound)
            : PlanSteps.Choose(result.Plans[result.ChosenPlan - 1], result.Steps, saved.Sequence, settings.Reason);
    }
}
