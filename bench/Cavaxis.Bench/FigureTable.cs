namespace Cavaxis.Bench;

/// <summary>A table of figures, written in Markdown.</summary>
internal sealed class FigureTable
{
    private readonly List<string[]> rows = [];
    private readonly string title;

    /// <summary>A table without rows.</summary>
    /// <param name="title">What is measured.</param>
    /// <param name="columns">Heads of the columns.</param>
    public FigureTable(string title, params string[] columns)
    {
        this.title = title;
        rows.Add(columns);
    }

    /// <summary>Adds a row; numbers are written without regard to the language of the machine.</summary>
    /// <param name="cells">Text, or a formatted number.</param>
    public void Add(params FormattableString[] cells) => rows.Add([.. cells.Select(FormattableString.Invariant)]);

    /// <summary>Prints the table.</summary>
    public void Print()
    {
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Max(row => row[column].Length))];
        Console.WriteLine();
        Console.WriteLine($"{title}:");
        Console.WriteLine();
        for (int i = 0; i < rows.Count; i++)
        {
            Console.WriteLine($"| {string.Join(" | ", rows[i].Select((cell, column) => cell.PadRight(widths[column])))} |");
            if (i == 0)
            {
                Console.WriteLine($"| {string.Join(" | ", widths.Select(width => new string('-', width)))} |");
            }
        }
    }
}
