namespace Cavaxis.Reports.OnePage;

/// <summary>A section of a page on which everything has to find room: rows that can be left out are counted, and it is said where they are.</summary>
public sealed record PageSection
{
    /// <summary>A section.</summary>
    /// <param name="title">Its heading.</param>
    /// <param name="rows">Rows, those that matter most first.</param>
    /// <param name="shares">Share of the width of each column; one column where it is left out.</param>
    /// <exception cref="ArgumentException">A row has another number of cells than there are columns.</exception>
    public PageSection(string title, IReadOnlyList<PageRow> rows, params IReadOnlyList<double> shares)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(shares);
        Shares = shares.Count == 0 ? [1] : [.. shares];
        if (rows.Any(r => r.Cells.Count != Shares.Count))
        {
            throw new ArgumentException($"Every row of \"{title}\" needs {Shares.Count} cells.", nameof(rows));
        }

        (Title, Rows) = (title, [.. rows]);
    }

    /// <summary>Its heading.</summary>
    public string Title { get; }

    /// <summary>Rows, those that matter most first.</summary>
    public IReadOnlyList<PageRow> Rows { get; }

    /// <summary>Share of the width of each column.</summary>
    public IReadOnlyList<double> Shares { get; }

    /// <summary>Names of the columns; none where empty.</summary>
    public IReadOnlyList<string> Heads { get; init; } = [];

    /// <summary>Rows that there are besides, and were never to stand here.</summary>
    public int Besides { get; init; }

    /// <summary>Where rows are that find no room.</summary>
    public string Elsewhere { get; init; } = "the full report";

    /// <summary>Rows that stand whatever happens; the others give way from the end.</summary>
    public int Least { get; init; } = 1;
}
