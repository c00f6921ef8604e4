namespace Cavaxis.Reports.Documents;

/// <summary>How the cells of a column stand.</summary>
public enum ColumnAlign
{
    /// <summary>Words: from the left.</summary>
    Left,

    /// <summary>Numbers: to the right.</summary>
    Right,

    /// <summary>Short marks: in the middle.</summary>
    Centre,
}
