namespace Cavaxis.Imaging.Exercises;

/// <summary>Where the tip is, computed from the geometry of scene and plane.</summary>
/// <param name="InView">Whether the tip lies in the slice and in the picture.</param>
/// <param name="X">Column of the middle of the tip's opening, or of the place over which it lies where it is out of the slice.</param>
/// <param name="Y">Row.</param>
/// <param name="OutOfPlaneMm">How far it lies beside the plane, mm.</param>
/// <param name="AlongX">Part of the way towards the tip along a row, of the cannula's direction as the picture shows it.</param>
/// <param name="AlongY">Part along a column.</param>
/// <param name="ToleranceMm">What counts as found, mm: the resolution there, the half width of the tip across and a millimetre for the hand.</param>
/// <param name="Lookalikes">What can be taken for it in this picture.</param>
public sealed record ExerciseTruth(
    bool InView, double X, double Y, double OutOfPlaneMm, double AlongX, double AlongY, double ToleranceMm, IReadOnlyList<Lookalike> Lookalikes);
