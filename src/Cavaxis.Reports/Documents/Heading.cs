namespace Cavaxis.Reports.Documents;

/// <summary>A heading under the report's title.</summary>
public sealed record Heading : ReportBlock
{
    /// <summary>Makes a heading.</summary>
    /// <param name="level">2 for a chapter, 3 or 4 below; 1 is the report's title.</param>
    /// <param name="text">The words.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not 2, 3 or 4.</exception>
    public Heading(int level, string text)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(level, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(level, 4);
        ArgumentNullException.ThrowIfNull(text);
        (Level, Text) = (level, text);
    }

    /// <summary>2, 3 or 4.</summary>
    public int Level { get; }

    /// <summary>The words.</summary>
    public string Text { get; }
}
