using System.Globalization;
using System.Text;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Quantities;

namespace Cavaxis.Circulation.Tests.Physiology;

/// <summary>The parameter table of docs/models/circulation.md is the catalogue. With CAVAXIS_WRITE_DOCS=1 it is written anew.</summary>
public class ParameterDocumentTests
{
    private const string Start = "<!-- parameters -->\n";
    private const string End = "<!-- end of parameters -->";

    [Fact]
    public void The_page_of_the_model_shows_every_parameter_with_its_source()
    {
        string path = Path.Combine(Root(), "docs", "models", "circulation.md");
        string text = File.ReadAllText(path);
        int from = text.IndexOf(Start, StringComparison.Ordinal);
        int to = text.IndexOf(End, StringComparison.Ordinal);
        Assert.True(from >= 0 && to > from, "The marks around the parameter table are missing.");
        string wanted = string.Concat(text.AsSpan(0, from + Start.Length), Table(), text.AsSpan(to));
        if (Environment.GetEnvironmentVariable("CAVAXIS_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, wanted);
            text = wanted;
        }

        Assert.Equal(wanted, text);
    }

    private static string Table()
    {
        StringBuilder table = new("\n| Name | Value | Unit | Range | Exponent | Meaning | Source | Certainty |\n|---|---|---|---|---|---|---|---|\n");
        foreach (ParameterDefinition d in ParameterTable.All)
        {
            table.Append(CultureInfo.InvariantCulture, $"| `{d.Name}` | {d.Value} | {d.Unit} | {d.Low} to {d.High} | {d.MassExponent} | ")
                .Append(CultureInfo.InvariantCulture, $"{d.Meaning} | {d.Source} | {Source.InWords(d.Certainty)} |\n");
        }

        return table.Append('\n').ToString();
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !Directory.Exists(Path.Combine(folder.FullName, "docs")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No docs folder above the tests.");
    }
}
