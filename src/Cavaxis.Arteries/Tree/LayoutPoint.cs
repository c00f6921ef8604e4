namespace Cavaxis.Arteries.Tree;

/// <summary>
/// A point of the drawing of the tree: a body seen from the front, so that the patient's right lies on the viewer's left. The drawing is
/// 100 wide and 200 high, the origin at its upper left corner; it is a scheme, drawn by this project, not to scale.
/// </summary>
/// <param name="X">From the viewer's left edge, 0 to 100.</param>
/// <param name="Y">From the crown downwards, 0 to 200.</param>
public readonly record struct LayoutPoint(double X, double Y);
