namespace Cavaxis.Reports.Drawings;

/// <summary>How an item is drawn. A missing colour means that part is not drawn.</summary>
public sealed record Style
{
    /// <summary>Colour of the outline or line; none where null.</summary>
    public Colour? Stroke { get; init; }

    /// <summary>Width of the line, mm.</summary>
    public double StrokeWidthMm { get; init; } = 0.25;

    /// <summary>How the line is broken.</summary>
    public Dash Dash { get; init; }

    /// <summary>Colour inside the outline; none where null.</summary>
    public Colour? Fill { get; init; }

    /// <summary>Line pattern inside the outline, drawn in <see cref="HatchColour"/>.</summary>
    public Hatch Hatch { get; init; }

    /// <summary>Colour of the pattern lines.</summary>
    public Colour HatchColour { get; init; } = Colour.Muted;

    /// <summary>Distance between the pattern lines, mm.</summary>
    public double HatchSpacingMm { get; init; } = 1.1;

    /// <summary>1 for opaque, 0 for invisible.</summary>
    public double Opacity { get; init; } = 1;

    /// <summary>A plain line.</summary>
    /// <param name="colour">Its colour.</param>
    /// <param name="widthMm">Its width, mm.</param>
    /// <param name="dash">How it is broken.</param>
    /// <returns>The style.</returns>
    public static Style Line(Colour colour, double widthMm = 0.25, Dash dash = Dash.Solid) =>
        new() { Stroke = colour, StrokeWidthMm = widthMm, Dash = dash };

    /// <summary>A filled area without outline.</summary>
    /// <param name="colour">Its colour.</param>
    /// <param name="opacity">1 for opaque.</param>
    /// <returns>The style.</returns>
    public static Style Area(Colour colour, double opacity = 1) => new() { Fill = colour, Opacity = opacity };

    /// <summary>A hatched area with a thin outline.</summary>
    /// <param name="hatch">The pattern.</param>
    /// <param name="colour">Colour of pattern and outline.</param>
    /// <param name="widthMm">Width of the outline, mm.</param>
    /// <returns>The style.</returns>
    public static Style Hatched(Hatch hatch, Colour colour, double widthMm = 0.15) =>
        new() { Stroke = colour, StrokeWidthMm = widthMm, Hatch = hatch, HatchColour = colour };
}
