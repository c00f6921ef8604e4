namespace Cavaxis.Reports.Drawings;

/// <summary>Which part of a text lies at its point.</summary>
public enum TextAnchor
{
    /// <summary>The text starts at the point.</summary>
    Start,

    /// <summary>The text is centred on the point.</summary>
    Middle,

    /// <summary>The text ends at the point.</summary>
    End,
}
