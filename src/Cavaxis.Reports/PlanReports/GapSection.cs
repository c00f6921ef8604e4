using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Documents;

namespace Cavaxis.Reports.PlanReports;

/// <summary>What is missing, odd, or was not checked.</summary>
internal static class GapSection
{
    /// <summary>Adds the section.</summary>
    public static void Add(List<ReportBlock> blocks, PlanningResult result)
    {
        blocks.Add(new Heading(2, "What is missing, odd, or was not checked"));
        if (result.Missing.Count > 0)
        {
            blocks.Add(new Table(
                "Missing from the case",
                [new TableColumn("Field"), new TableColumn("Used instead"), new TableColumn("Matters for")],
                [.. result.Missing.Select(m => (IReadOnlyList<string>)[m.Field, m.UsedInstead, m.Matters])]));
        }

        if (result.Surprises.Count > 0)
        {
            blocks.Add(new Heading(3, "Odd in the case"));
            blocks.Add(new BulletList(result.Surprises));
        }

        if (result.LoosenedRules.Count > 0)
        {
            blocks.Add(new Callout(CalloutKind.Warning, "Rules looser than the built-in ones", string.Join("\n", result.LoosenedRules)));
        }

        blocks.Add(new Heading(3, "Not checked"));
        blocks.Add(new BulletList(result.NotChecked));
    }
}
