using System.Globalization;
using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Lumens;

namespace Cavaxis.Anatomy.Tests.Lumens;

public class LumenDocumentTests
{
    [Fact]
    public void Every_dimension_stands_in_the_document_as_it_is_drawn()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Cavaxis.slnx")))
        {
            folder = folder.Parent;
        }

        string[] lines = File.ReadAllLines(Path.Combine(folder!.FullName, "docs", "models", "lumen.md"));
        Assert.All(LumenTable.Rows, row => Assert.Contains(
            string.Create(
                CultureInfo.InvariantCulture,
                $"| {row.Dimension} | {row.Unit} | {(row.Scale == LatentScale.Logarithmic ? "log" : "plain")} | {row.Middle} | {row.Spread} | {row.Low} to {row.High} | {row.Source} |"),
            lines));
        Assert.Equal(Enum.GetValues<LumenDimension>(), LumenTable.Rows.Select(static row => row.Dimension));
    }
}
