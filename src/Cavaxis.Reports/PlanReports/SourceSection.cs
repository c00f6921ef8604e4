using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>The numbers and where they come from.</summary>
internal static class SourceSection
{
    /// <summary>Adds the section.</summary>
    public static void Add(List<ReportBlock> blocks, PlanningResult result, RuleBook rules)
    {
        blocks.Add(new Heading(2, "Numbers and sources"));
        blocks.Add(new Table(
            "This patient's axis",
            [new TableColumn("Dimension"), new TableColumn("Value (90 % interval)", ColumnAlign.Right), new TableColumn("Origin"), new TableColumn("Population value from")],
            [.. result.Axis.Select(a => (IReadOnlyList<string>)
            [
                PlainWords.FromName(a.Dimension.ToString()), ReportNumber.WithInterval(a.Value, a.Unit == "1" ? "F2" : "F0", a.Unit), ReportNumber.Origin(a.Value), a.PopulationSource.ToString(),
            ])]));
        blocks.Add(new Table(
            "Limits and targets",
            [new TableColumn("Limit"), new TableColumn("Value", ColumnAlign.Right), new TableColumn("Why"), new TableColumn("Source")],
            [.. rules.Limits.Select(l => (IReadOnlyList<string>)
            [
                PlainWords.FromName(l.Name.ToString()), ReportNumber.Plain(l.Value, "G4"), l.Rationale, l.ToSource().ToString(),
            ])]));
        blocks.Add(new Table(
            "Zones of this plan's ports",
            [new TableColumn("Rule"), new TableColumn("Why"), new TableColumn("Source")],
            [.. rules.Zones
                .Where(z => result.Plans.Count > 0 && z.Configurations.Contains(result.Plans[result.ChosenPlan - 1].Configuration))
                .Select(z => (IReadOnlyList<string>)[z.Id, z.Rationale, z.ToSource().ToString()])]));
    }
}
