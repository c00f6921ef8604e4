using Cavaxis.Cli.Output;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Arterial;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary><c>plan</c>: a case file in, ranked and explained plans out.</summary>
/// <param name="output">Where results go.</param>
public sealed class PlanCommand(CommandOutput output) : Command<PlanSettings>
{
    /// <summary>What planning calls the rank of the chosen plan in its faults.</summary>
    private const string ChosenRankField = "plan";

    /// <inheritdoc/>
    public override int Execute(CommandContext context, PlanSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        PlanningOptions options = PlanOptionsReader.Read(settings);
        InsertionOptions? insertion = PlanOptionsReader.Insertion(settings);
        ReportFile? report = settings.ReportPath is null ? null : ReportFile.For(settings.ReportPath);
        CaseFile caseFile = CaseInput.Read(settings.CasePath);
        RuleBook rules = settings.Rules is null
            ? RuleBookReader.BuiltIn
            : RuleBookReader.Read(InputFile.ReadAll(settings.Rules, CaseFileReader.LargestFileBytes), settings.Rules);
        DeviceCatalogue catalogue = CatalogueLoader.Load(settings.Catalogues);
        PlanningResult result = ProgressNote.While(
            output,
            FormattableString.Invariant($"Planning over {options.Anatomies} anatomies"),
            () => Plan(caseFile, catalogue, rules, options));
        InsertionResult? tried = null;
        if (insertion is not null)
        {
            (result, tried) = ProgressNote.While(
                output,
                FormattableString.Invariant($"Inserting into {insertion.Anatomies} anatomies"),
                told => PlanInsertions.On(caseFile, catalogue, result, insertion, told, cancellationToken));
        }

        if (settings.Arteries)
        {
            result = ProgressNote.Shared(output, "Computing the arteries", told => PlanArteries.On(caseFile, catalogue, rules, options, result, told, cancellationToken));
        }

        if (report is not null)
        {
            ProgressNote.While(output, "Writing the report", () => report.Write(result, rules, catalogue, tried));
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

    private static PlanningResult Plan(CaseFile caseFile, DeviceCatalogue catalogue, RuleBook rules, PlanningOptions options)
    {
        try
        {
            return Planner.Plan(caseFile, catalogue, rules, options);
        }
        catch (InputFaultException e) when (e.Faults is [{ Field: ChosenRankField }])
        {
            // Planning knows how many plans there are, and not what the option is called here.
            throw new InputFaultException(e.Faults[0] with { Code = FaultCode.BadOption, Field = "--plan" });
        }
    }
}
