using System.Globalization;
using System.Text;

namespace Cavaxis.Validation;

/// <summary>Writes <c>docs/validation.md</c> from the rows.</summary>
public static class ValidationDocument
{
    /// <summary>The document.</summary>
    /// <param name="rows">Rows, room by room.</param>
    /// <returns>Markdown.</returns>
    public static string Write(IReadOnlyList<ValidationRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        StringBuilder text = new();
        text.Append(
            """
            # Validation

            Written by the tests; do not edit by hand. Every row compares a value that the program computes with something outside it.
            The source column says how far the source was opened: seen, seen second hand, derived, closed form, from memory, common practice,
            or an assumption of this project. A row from memory is a lead, not proof. `./run validate` prints the same rows, computed anew.
            Values got are printed with four digits, because the last digits depend on the processor's vector width; they are compared in full.


            """);
        text.Append(CultureInfo.InvariantCulture, $"{rows.Count(row => row.Passes)} of {rows.Count} rows hold; {rows.Count(row => row.KnownMiss)} are known misses of the model and stay here as such.\n");
        foreach (IGrouping<string, ValidationRow> room in rows.GroupBy(row => row.Room))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## {room.Key}\n\n");
            text.Append("| check | source | expected | got | unit | tolerance | holds | note |\n|---|---|---|---|---|---|---|---|\n");
            foreach (ValidationRow row in room)
            {
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"| {Cell(row.Check)} | {Cell(row.Source.ToString())} | {Expected(row)} | {row.Got.ToString("G4", CultureInfo.InvariantCulture)} | {Cell(row.Unit)} | {Allowed(row)} | {(row.Passes ? "yes" : row.KnownMiss ? "no, known miss" : "NO")} | {Cell(row.Note)} |\n");
            }
        }

        return text.ToString();
    }

    /// <summary>The expected value with the sign of a one-sided comparison.</summary>
    /// <param name="row">The row.</param>
    /// <returns>Such as "≥ 0.9".</returns>
    public static string Expected(ValidationRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        string value = row.Expected.ToString("G6", CultureInfo.InvariantCulture);
        return row.Tolerance switch
        {
            Tolerance.AtLeast => $"≥ {value}",
            Tolerance.AtMost => $"≤ {value}",
            _ => value,
        };
    }

    private static string Allowed(ValidationRow row) => row.Tolerance switch
    {
        Tolerance.Absolute => string.Create(CultureInfo.InvariantCulture, $"± {row.Bound:G3}"),
        Tolerance.Relative => string.Create(CultureInfo.InvariantCulture, $"± {row.Bound * 100:G3} %"),
        _ => "one-sided",
    };

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace('\n', ' ');
}
