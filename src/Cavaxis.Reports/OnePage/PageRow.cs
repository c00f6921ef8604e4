namespace Cavaxis.Reports.OnePage;

/// <summary>A row of a section.</summary>
/// <param name="Cells">One text for each column of the section.</param>
/// <param name="Grave">True for what must be seen first: it stands in bold with a sign before it.</param>
public sealed record PageRow(IReadOnlyList<string> Cells, bool Grave = false)
{
    /// <summary>A row of one text.</summary>
    /// <param name="words">The text.</param>
    /// <param name="grave">True for what must be seen first.</param>
    /// <returns>The row.</returns>
    public static PageRow Of(string words, bool grave = false) => new([words], grave);
}
