using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The report of a planned case: the answer first, then the drawing, the pressures, the alternatives, steps, gaps and sources.</summary>
public static class PlanReport
{
    /// <summary>Writes the report as a document free of any format.</summary>
    /// <param name="result">What planning said.</param>
    /// <param name="rules">The rule book used.</param>
    /// <param name="catalogue">The catalogue used.</param>
    /// <param name="insertion">How wire and cannulae of the chosen plan go in; null where it was not tried.</param>
    /// <returns>The document.</returns>
    public static ReportDocument Of(PlanningResult result, RuleBook rules, DeviceCatalogue catalogue, InsertionResult? insertion = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(catalogue);
        List<ReportBlock> blocks = [];
        if (result.Invented)
        {
            blocks.Add(new Callout(CalloutKind.Information, "Invented case", "This case was made up for demonstration. It describes no real person."));
        }

        if (result.Plans.Count == 0)
        {
            blocks.Add(new Callout(CalloutKind.Stop, "No plan", "No combination of devices fits these vessels and rules."));
        }
        else
        {
            ChosenPlanSection.Add(blocks, result, rules, catalogue);
        }

        AlternativesSection.Add(blocks, result);
        if (insertion is { Cannulae.Count: > 0 })
        {
            InsertionSection.Add(blocks, insertion);
        }

        if (result.Steps.Count > 0)
        {
            StepSection.Add(blocks, result.Steps);
        }

        GapSection.Add(blocks, result);
        SourceSection.Add(blocks, result, rules);
        string subtitle = FormattableString.Invariant(
            $"Cannulation plan. {result.Patient.AgeYears:G3} years, {result.Patient.HeightCm:F0} cm, {result.Patient.WeightKg:G4} kg. {result.Anatomies} sampled anatomies, seed {result.Seed}, rule book {result.RuleBookEdition}.");
        return new ReportDocument(result.CaseTitle, subtitle, result.Caution, blocks);
    }
}
