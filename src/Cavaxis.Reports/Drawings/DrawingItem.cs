namespace Cavaxis.Reports.Drawings;

/// <summary>One thing on the paper. Items are painted in order, later ones over earlier ones.</summary>
public abstract record DrawingItem
{
    private protected DrawingItem()
    {
    }
}

/// <summary>A straight line.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record Line(Point From, Point To, Style Style) : DrawingItem;

/// <summary>An open chain of straight lines.</summary>
/// <param name="Points">At least two points.</param>
/// <param name="Style">How it is drawn; its fill is ignored.</param>
public sealed record Polyline(IReadOnlyList<Point> Points, Style Style) : DrawingItem;

/// <summary>A closed area bounded by straight lines.</summary>
/// <param name="Points">At least three corners, in order.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record Polygon(IReadOnlyList<Point> Points, Style Style) : DrawingItem;

/// <summary>An upright rectangle.</summary>
/// <param name="Bounds">Its edges.</param>
/// <param name="Style">How it is drawn.</param>
/// <param name="CornerMm">Radius of the corners, mm.</param>
public sealed record Rectangle(Box Bounds, Style Style, double CornerMm = 0) : DrawingItem;

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="RadiusMm">Its radius, mm.</param>
/// <param name="Style">How it is drawn.</param>
public sealed record Circle(Point Centre, double RadiusMm, Style Style) : DrawingItem;

/// <summary>A straight line with a filled head at its end.</summary>
/// <param name="From">Tail.</param>
/// <param name="To">Tip of the head.</param>
/// <param name="Style">How the line is drawn; the head takes the stroke's colour.</param>
/// <param name="HeadMm">Length of the head, mm.</param>
public sealed record Arrow(Point From, Point To, Style Style, double HeadMm = 2) : DrawingItem;

/// <summary>One line of text.</summary>
/// <param name="At">Where its base line starts, is centred or ends.</param>
/// <param name="Content">The words, unescaped.</param>
/// <param name="SizePt">Height of the font, points.</param>
/// <param name="Anchor">Which part of the text lies at the point.</param>
/// <param name="RotationDeg">Turned clockwise about the point, degrees.</param>
/// <param name="Colour">Colour; ink where null.</param>
/// <param name="Bold">Bold face.</param>
public sealed record Text(
    Point At,
    string Content,
    double SizePt,
    TextAnchor Anchor = TextAnchor.Start,
    double RotationDeg = 0,
    Colour? Colour = null,
    bool Bold = false) : DrawingItem;
