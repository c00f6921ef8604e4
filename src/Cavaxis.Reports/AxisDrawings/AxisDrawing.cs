using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.AxisDrawings;

/// <summary>
/// Draws the axis true to scale, seen from the front: the patient's right on the left. Anatomy is labelled on the left,
/// cannulae on the right, each with a hatched band for its uncertainty.
/// </summary>
public static class AxisDrawing
{
    /// <summary>The drawing of a scene.</summary>
    /// <param name="scene">What to draw.</param>
    /// <returns>A drawing 174 mm wide, at most one A4 page high unless the labels need more.</returns>
    /// <exception cref="ArgumentException">The trunk has gaps or a wrong order, or a number cannot be drawn.</exception>
    public static Drawing Of(AxisScene scene)
    {
        AxisSceneCheck.Check(scene);
        AxisFrame frame = AxisFrame.For(scene);
        var trunk = new AxisTrunk(scene, frame);
        var anatomy = new AnatomyPainter(scene, frame, trunk);
        var cannulae = new CannulaPainter(scene, frame, trunk, anatomy.Valve);
        var leftMargin = new MarginPainter(frame, onLeft: true);
        var rightMargin = new MarginPainter(frame, onLeft: false);
        IReadOnlyList<MarginEntry> left = AxisMargins.Left(scene, frame, trunk, anatomy);
        IReadOnlyList<MarginEntry> right = AxisMargins.Right(scene, trunk, cannulae);
        double need = Math.Max(leftMargin.Need(left), rightMargin.Need(right));
        double bottom = Math.Max(frame.Bottom + 1, AxisFrame.Top - 2 + need);
        double height = bottom + 2 + AxisFurniture.LegendMm + (3.1 * AxisFurniture.NoteLines(scene).Count);
        List<DrawingItem> items =
        [
            .. AxisFurniture.Sides(),
            .. anatomy.Paint(),
            .. cannulae.Paint(),
            .. BreakPainter.Paint(scene, frame, trunk),
            .. AxisFurniture.Ruler(frame),
            .. new SegmentNames(scene, frame, anatomy, cannulae, right).Paint(),
            .. leftMargin.Paint(left, bottom),
            .. rightMargin.Paint(right, bottom),
            .. AxisFurniture.Legend(scene, frame, bottom + 2),
        ];
        return new Drawing(AxisFrame.PaperWidth, height, scene.Title, scene.Description, items);
    }
}
