namespace Cavaxis.Reports.Drawings;

/// <summary>An immutable vector drawing in mm on paper, with the words that stand for it where it cannot be seen.</summary>
public sealed record Drawing
{
    /// <summary>Makes a drawing.</summary>
    /// <param name="widthMm">Width of the paper, mm, above zero.</param>
    /// <param name="heightMm">Height of the paper, mm, above zero.</param>
    /// <param name="title">Short name.</param>
    /// <param name="description">What the drawing shows, in words, for those who cannot see it.</param>
    /// <param name="items">Items in painting order.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not finite or not above zero.</exception>
    public Drawing(double widthMm, double heightMm, string title, string description, IReadOnlyList<DrawingItem> items)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(description);
        ArgumentNullException.ThrowIfNull(items);
        WidthMm = Positive(widthMm, nameof(widthMm));
        HeightMm = Positive(heightMm, nameof(heightMm));
        (Title, Description, Items) = (title, description, [.. items]);
    }

    /// <summary>Width of the paper, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Height of the paper, mm.</summary>
    public double HeightMm { get; }

    /// <summary>Short name.</summary>
    public string Title { get; }

    /// <summary>What the drawing shows, in words.</summary>
    public string Description { get; }

    /// <summary>Items in painting order.</summary>
    public IReadOnlyList<DrawingItem> Items { get; }

    private static double Positive(double value, string name) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "A drawing needs a finite size above zero.");
}
