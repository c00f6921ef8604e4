namespace Cavaxis.Reports.Documents;

/// <summary>A table whose first row and, on wish, first column are headers.</summary>
public sealed record Table : ReportBlock
{
    /// <summary>Makes a table.</summary>
    /// <param name="caption">What the table shows.</param>
    /// <param name="columns">At least one column.</param>
    /// <param name="rows">Rows with as many cells as columns; may be none.</param>
    /// <param name="firstColumnIsHeader">Whether the first cell of a row names the row.</param>
    /// <exception cref="ArgumentException">There is no column, or a row has another number of cells.</exception>
    public Table(
        string caption, IReadOnlyList<TableColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows, bool firstColumnIsHeader = true)
    {
        ArgumentNullException.ThrowIfNull(caption);
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(rows);
        if (columns.Count == 0)
        {
            throw new ArgumentException("A table needs a column.", nameof(columns));
        }

        if (rows.Any(r => r.Count != columns.Count))
        {
            throw new ArgumentException($"Every row of the table \"{caption}\" needs {columns.Count} cells.", nameof(rows));
        }

        Caption = caption;
        Columns = [.. columns];
        Rows = [.. rows.Select(r => (IReadOnlyList<string>)[.. r])];
        FirstColumnIsHeader = firstColumnIsHeader;
    }

    /// <summary>What the table shows.</summary>
    public string Caption { get; }

    /// <summary>Columns from left to right.</summary>
    public IReadOnlyList<TableColumn> Columns { get; }

    /// <summary>Rows from top to bottom.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; }

    /// <summary>Whether the first cell of a row names the row.</summary>
    public bool FirstColumnIsHeader { get; }
}
