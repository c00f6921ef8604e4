namespace Cavaxis.Reports.Drawings;

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
