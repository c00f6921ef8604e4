using System.Globalization;
using System.Text;

namespace Cavaxis.Bedside.Exports;

/// <summary>
/// Comma-separated values (RFC 4180): lines end with CR LF, fields with comma, quote or line break stand in quotes, quotes are doubled. A text that a spreadsheet would take for a formula gets an
/// apostrophe before it; numbers are written as numbers and get none.
/// </summary>
public static class CsvText
{
    private const string LineEnd = "\r\n";

    /// <summary>Signs that begin a formula in a spreadsheet, also after blanks.</summary>
    private const string FormulaSigns = "=+-@\t\r\n|%＝＋－＠";

    /// <summary>Writes a table.</summary>
    /// <param name="header">Names of the columns, with units.</param>
    /// <param name="rows">Rows: texts, numbers (double, long, int), moments, flags, or null for an empty field.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentException">A row has another number of fields, or a field is of another kind.</exception>
    public static string Write(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<object?>> rows)
    {
        ArgumentNullException.ThrowIfNull(header);
        ArgumentNullException.ThrowIfNull(rows);
        StringBuilder text = new();
        text.AppendJoin(',', header.Select(static h => Quoted(Guarded(h)))).Append(LineEnd);
        foreach (IReadOnlyList<object?> row in rows)
        {
            if (row.Count != header.Count)
            {
                throw new ArgumentException($"A row needs {header.Count} fields.", nameof(rows));
            }

            text.AppendJoin(',', row.Select(Field)).Append(LineEnd);
        }

        return text.ToString();
    }

    private static string Field(object? value) => value switch
    {
        null => string.Empty,
        string words => Quoted(Guarded(words)),
        double number => double.IsFinite(number) ? number.ToString("R", CultureInfo.InvariantCulture) : string.Empty,
        int or long => ((IFormattable)value).ToString(null, CultureInfo.InvariantCulture),
        bool flag => flag ? "yes" : "no",
        DateTimeOffset time => time.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"A field of the kind {value.GetType().Name} is not written.", nameof(value)),
    };

    private static string Guarded(string text)
    {
        string seen = text.TrimStart(' ', '\u00A0', '\uFEFF');
        return seen.Length > 0 && FormulaSigns.Contains(seen[0], StringComparison.Ordinal) ? "'" + text : text;
    }

    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny(",\"\r\n") || text.StartsWith(' ') || text.EndsWith(' ') ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
