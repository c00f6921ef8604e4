using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Population;

namespace Cavaxis.Anatomy.Tests.Population;

public class DocumentTests
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(Root(), "docs", "models", "anatomy.md"));

    [Fact]
    public void Every_row_of_the_table_stands_in_the_document_with_its_sources()
    {
        foreach (PopulationParameter row in PopulationTable.Rows)
        {
            string line = Assert.Single(
                Lines, text => text.StartsWith($"| {row.Dimension} | {row.Unit} |", StringComparison.Ordinal));
            Assert.Contains(
                string.Create(CultureInfo.InvariantCulture, $"| {row.AdultMiddle} |"), line, StringComparison.Ordinal);
            Assert.Contains($"| {row.Source} |", line, StringComparison.Ordinal);
            Assert.Contains($"| {row.GrowthSource} |", line, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_edge_stands_in_the_document_with_its_step()
    {
        foreach (EdgeDefinition edge in JunctionEdges.Table)
        {
            string expected = string.Create(
                CultureInfo.InvariantCulture,
                $"| {(edge.IsSuperior ? "superior" : "inferior")} | {edge.Edge} | {edge.BelowOwnEdgeMm} | {edge.SdMm} | {edge.Source} |");
            Assert.Contains(expected, Lines);
        }
    }

    [Fact]
    public void Every_shared_cause_stands_in_the_document() => Assert.All(
        Enum.GetValues<AxisFactor>(),
        factor => Assert.Single(Lines, text => text.StartsWith($"| {factor} |", StringComparison.Ordinal)));

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Cavaxis.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No folder above the tests holds the solution.");
    }
}
