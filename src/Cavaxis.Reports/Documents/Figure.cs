using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.Documents;

/// <summary>A drawing with its caption.</summary>
public sealed record Figure : ReportBlock
{
    /// <summary>Makes a figure.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="caption">The words under it.</param>
    /// <param name="altText">What it shows, for those who cannot see it; must not be empty.</param>
    /// <exception cref="ArgumentException">The alternative text is empty.</exception>
    public Figure(Drawing drawing, string caption, string altText)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(caption);
        ArgumentException.ThrowIfNullOrWhiteSpace(altText);
        (Drawing, Caption, AltText) = (drawing, caption, altText);
    }

    /// <summary>The drawing.</summary>
    public Drawing Drawing { get; }

    /// <summary>The words under it.</summary>
    public string Caption { get; }

    /// <summary>What it shows, in words.</summary>
    public string AltText { get; }
}
