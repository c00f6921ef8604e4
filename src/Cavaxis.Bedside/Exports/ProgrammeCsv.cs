namespace Cavaxis.Bedside.Exports;

/// <summary>The table of a programme: one line a patient; an empty field is unknown, never "no".</summary>
public static class ProgrammeCsv
{
    private static readonly string[] Header =
    [
        "patient", "configuration", "support started (UTC)", "support ended (UTC)", "support (h)", "cannulae (count)", "malpositions (count)", "limb ischaemia (yes/no)", "vein thrombosis (yes/no)",
        "complications", "survived to discharge (yes/no)",
    ];

    /// <summary>Writes it.</summary>
    /// <param name="rows">The patients.</param>
    /// <returns>CSV; as a file UTF-8 with a byte order mark, by which spreadsheets know it.</returns>
    public static string Write(IEnumerable<ProgrammeRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        return CsvText.Write(Header, rows.Select(static r => (IReadOnlyList<object?>)
        [
            r.Patient, r.Configuration, r.StartedAt, r.EndedAt, r.StartedAt is DateTimeOffset from && r.EndedAt is DateTimeOffset to ? Math.Round((to - from).TotalHours, 2) : null,
            r.Cannulae, r.Malpositions, r.LimbIschaemia, r.Thrombosis, string.Join("; ", r.Complications), r.Survived,
        ]));
    }
}
