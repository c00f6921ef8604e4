using Spectre.Console.Cli;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary>The verbs that write sheets, reports and exports.</summary>
internal static class SheetVerbTable
{
    /// <summary>Adds those about one patient to the branch of patients.</summary>
    /// <param name="branch">The branch.</param>
    public static void AddTo(IConfigurator<CommandSettings> branch)
    {
        branch.AddCommand<PatientHandoverCommand>("handover").WithDescription("Write a patient's handover sheet, one page.");
        branch.AddCommand<PatientReportCommand>("report").WithDescription("Write the full report of a patient's course.");
        branch.AddCommand<PatientFhirCommand>("fhir").WithDescription("Write a FHIR R4 bundle of a patient's course.");
    }

    /// <summary>Adds the branch of programmes.</summary>
    /// <param name="configuration">The command line.</param>
    /// <param name="more">Adds verbs of other folders to the branch.</param>
    public static void AddProgramme(IConfigurator configuration, Action<IConfigurator<CommandSettings>> more) => configuration.AddBranch("programme", branch =>
    {
        branch.SetDescription("A programme as a whole.");
        branch.AddCommand<ProgrammeCsvCommand>("csv").WithDescription("Write a programme's table, a row a patient.");
        more(branch);
    });
}
