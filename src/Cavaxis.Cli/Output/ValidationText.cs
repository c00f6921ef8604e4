using System.Globalization;
using Cavaxis.Quantities;
using Cavaxis.Validation;
using Spectre.Console;

namespace Cavaxis.Cli.Output;

/// <summary>The validation table in at most 100 columns; sources in full stand in docs/validation.md.</summary>
internal static class ValidationText
{
    /// <summary>Writes the rows and the count.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="rows">The rows.</param>
    public static void Write(CommandOutput output, IReadOnlyList<ValidationRow> rows)
    {
        Table table = new Table().Border(TableBorder.Simple);
        table.AddColumns("", "room", "check", "source", "expected", "got");
        foreach (ValidationRow row in rows)
        {
            table.AddRow(
                row.Passes ? "ok" : row.KnownMiss ? "miss" : "FAILS",
                Markup.Escape(row.Room),
                Markup.Escape(row.Check),
                Markup.Escape(Source.InWords(row.Source.Certainty)),
                Markup.Escape($"{ValidationDocument.Expected(row)} {row.Unit}"),
                row.Got.ToString("G6", CultureInfo.InvariantCulture));
        }

        output.Console.Write(table);
        int passed = rows.Count(row => row.Passes);
        int known = rows.Count(row => row.KnownMiss && !row.Passes);
        output.Line($"{passed} of {rows.Count} rows hold; {known} are known misses; {rows.Count - passed - known} fail.");
        output.Line("Sources and tolerances in full: docs/validation.md.");
    }
}
