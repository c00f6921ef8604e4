using Cavaxis.Cli.Output;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>plan</c>: a case file in, ranked and explained plans out.</summary>
/// <param name="output">Where results go.</param>
public sealed class PlanCommand(CommandOutput output) : Command<PlanSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, PlanSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        PlanningOptions options = PlanOptionsReader.Read(settings);
        ReportFile? report = settings.ReportPath is null ? null : ReportFile.For(settings.ReportPath);
        CaseFile caseFile = ReadCase(settings.CasePath);
        RuleBook rules = settings.Rules is null
            ? RuleBookReader.BuiltIn
            : RuleBookReader.Read(InputFile.ReadAll(settings.Rules, CaseFileReader.LargestFileBytes), settings.Rules);
        DeviceCatalogue catalogue = CatalogueLoader.Load(settings.Catalogues);
        PlanningResult result = ProgressNote.While(
            output,
            FormattableString.Invariant($"Planning over {options.Anatomies} anatomies"),
            () => Planner.Plan(caseFile, catalogue, rules, options));
        if (report is not null)
        {
            ProgressNote.While(output, "Writing the report", () => report.Write(result, rules, catalogue));
        }

        if (settings.Json)
        {
            output.Json(result);
        }
        else
        {
            new PlanText(output).Write(result);
            if (report is not null)
            {
                output.Line();
                output.Line($"Report written to {settings.ReportPath}.");
            }
        }

        return (int)(result.EveryPlanIsStopped ? ExitCode.StopFound : ExitCode.Done);
    }

    private static CaseFile ReadCase(string path)
    {
        using FileStream stream = InputFile.Open(path);
        return CaseFileReader.ReadStream(stream, Path.GetFileName(path));
    }
}
