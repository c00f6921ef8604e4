using System.Globalization;
using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Drawings;

namespace Cavaxis.Reports.InsertionReports;

/// <summary>
/// An insertion study to scale from the front and from the left: the middle anatomy, the wire of every sampled anatomy faint, that of the
/// middle one bold, and what lies in it at the end.
/// </summary>
public static class InsertionSheet
{
    private const double ViewMm = 92;
    private const double TopMm = 30;
    private const double HeightMm = 215;
    private const double FootLineMm = 4.5;
    private const double MarginPatientMm = 15;
    private const double ScaleBarMm = 50;

    private static readonly (string Words, bool Bold)[] FootWords =
    [
        ("Thin: the wire in each sampled anatomy, drawn over the middle one, so it may leave its outline; dashed and dark red where it does not end in its usual place.", false),
        ("Bold: the wire in the middle anatomy before the cannula. Blue band: the cannula in it at the end, to scale. Nothing beats, breathes or collapses.", false),
        ("Supports trained clinicians; not a certified medical device. It defers to imaging, the device's instructions for use, local protocol and licensed practice.", true),
        ("Stiffness and friction are drawn from ranges, since none is published. No force has a limit. Perforation was not checked.", false),
    ];

    private static readonly (CavalLandmark Landmark, string Name)[] Named =
    [
        (CavalLandmark.Scaj, "SCAJ"), (CavalLandmark.TricuspidCentre, "tricuspid"), (CavalLandmark.Icaj, "ICAJ"), (CavalLandmark.HepaticVein, "hepatic vein"),
        (CavalLandmark.RenalVein, "renal veins"), (CavalLandmark.IliacConfluence, "iliac confluence"),
    ];

    /// <summary>The drawing of all cannulae that were studied, side by side.</summary>
    /// <param name="result">The study, with its paths.</param>
    /// <returns>A drawing.</returns>
    /// <exception cref="ArgumentException">The study holds no venous cannula.</exception>
    public static Drawing Of(InsertionResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CannulaInsertion[] drawn = [.. result.Cannulae.Where(static c => c.Paths is not null)];
        if (drawn.Length == 0)
        {
            throw new ArgumentException("There is no venous cannula to draw.", nameof(result));
        }

        double width = Math.Max(190, 2 * ViewMm * drawn.Length);
        List<DrawingItem> items =
        [
            new Text(new Point(4, 7), $"{result.CaseTitle}{(result.Invented ? "  [INVENTED CASE]" : string.Empty)}", 11, Bold: true),
            new Text(new Point(4, 12.5), string.Create(CultureInfo.InvariantCulture, $"Plan {result.PlanRank}, {result.PlanName}; {PlainWords.FromName(result.Wire.ToString())} wire, {result.Anatomies} sampled anatomies, seed {result.Seed}. Calculated."), 9),
        ];
        for (int i = 0; i < drawn.Length; i++)
        {
            Row(items, drawn[i], 2 * ViewMm * i);
        }

        double foot = TopMm + HeightMm + 6;
        foreach ((string words, bool bold) in FootWords)
        {
            foreach (string line in TextMetrics.Wrapped(words, width - 8, 8, bold))
            {
                items.Add(new Text(new Point(4, foot), line, 8, Bold: bold));
                foot += FootLineMm;
            }
        }

        return new Drawing(width, foot + FootLineMm, $"Insertion of {result.PlanName}", Description(result), items);
    }

    /// <summary>The drawing in words.</summary>
    /// <param name="result">The study.</param>
    /// <returns>Sentences.</returns>
    public static string Description(InsertionResult result) => string.Join(" ", result.Cannulae.Select(static c => string.Create(
        CultureInfo.InvariantCulture,
        $"{PlainWords.Role(c.Role)} through the {PlainWords.Vessel(c.Route, c.Side)}: every part as it should in {100 * c.Right.Value:F0} % of anatomies; wire ends in {string.Join(", ", c.WireEnds.Select(e => string.Create(CultureInfo.InvariantCulture, $"{PlainWords.FromName(e.End.ToString())} {100 * e.Share.Value:F0} %")))}.")));

    private static void Row(List<DrawingItem> items, CannulaInsertion cannula, double left)
    {
        InsertionPaths paths = cannula.Paths!;
        Vector3D[] all = [.. paths.Lumen.Joined.Parts.SelectMany(static part => new[] { part.Low, part.High }), .. paths.Wires.SelectMany(static wire => wire.Skip(1))];
        double head = all.Max(static p => p.Z) + MarginPatientMm;
        double feet = all.Min(static p => p.Z) - MarginPatientMm;
        double scale = HeightMm / (head - feet);
        items.Add(new Text(new Point(left + 4, 20), string.Create(
            CultureInfo.InvariantCulture,
            $"{PlainWords.Role(cannula.Role)}, {PlainWords.Vessel(cannula.Route, cannula.Side)}: right in {100 * cannula.Right.Value:F0} % ({100 * cannula.Right.Low:F0} to {100 * cannula.Right.High:F0})"), 9, Bold: true));
        foreach ((ViewPlane plane, int column) in new[] { (ViewPlane.Frontal, 0), (ViewPlane.Sagittal, 1) })
        {
            double across = (all.Max(plane.Across) + all.Min(plane.Across)) / 2;
            double middle = left + ((column + 0.5) * ViewMm) + 8;
            View(items, cannula, new ViewScale(plane, middle - (scale * across), TopMm, head, scale), left + (column * ViewMm));
        }
    }

    private static void View(List<DrawingItem> items, CannulaInsertion cannula, ViewScale view, double left)
    {
        InsertionPaths paths = cannula.Paths!;
        items.Add(new Text(new Point(left + 4, 26), $"{view.Plane.Name}: {view.Plane.LeftWord} | {view.Plane.RightWord}", 8, Colour: Colour.Muted));
        items.AddRange(LumenSilhouette.Of(paths.Lumen, view));
        foreach ((CavalLandmark landmark, string name) in Named)
        {
            Point at = view.At(paths.Lumen.PointOf(landmark));
            items.Add(new Line(new Point(left + 20, at.Y), new Point(at.X, at.Y), Style.Line(Colour.Muted, 0.15, Dash.Dotted)));
            items.Add(new Text(new Point(left + 3, at.Y + 1), name, 7, Colour: Colour.Muted));
        }

        if (paths.MiddleCannula.Count > 1)
        {
            double outer = Math.Max(0.8, view.Scale * 2 * paths.CannulaRadiusMm);
            items.Add(new Polyline(Projected(paths.MiddleCannula, view), Style.Line(Colour.Drainage, outer) with { Opacity = 0.45 }));
        }

        for (int i = 0; i < paths.Wires.Count; i++)
        {
            if (paths.Wires[i].Count > 1)
            {
                bool there = paths.Ends[i] == paths.Wanted;
                items.Add(new Polyline(
                    Projected(paths.Wires[i], view), Style.Line(there ? Colour.Muted : Colour.Refused, there ? 0.12 : 0.25, there ? Dash.Solid : Dash.Dashed) with { Opacity = there ? 0.35 : 0.8 }));
            }
        }

        if (paths.MiddleWire.Count > 1)
        {
            items.Add(new Polyline(Projected(paths.MiddleWire, view), Style.Line(Colour.Ink, 0.7)));
            items.Add(new Circle(view.At(paths.MiddleWire[^1]), 1.2, Style.Area(Colour.Ink)));
        }

        double bar = view.Scale * ScaleBarMm;
        double y = TopMm + HeightMm - 3;
        items.Add(new Line(new Point(left + ViewMm - 6 - bar, y), new Point(left + ViewMm - 6, y), Style.Line(Colour.Ink, 0.6)));
        items.Add(new Text(new Point(left + ViewMm - 6 - (bar / 2), y - 1.5), "5 cm", 8, TextAnchor.Middle));
    }

    private static Point[] Projected(IReadOnlyList<Vector3D> path, ViewScale view) => [.. path.Skip(1).Select(view.At)];
}
