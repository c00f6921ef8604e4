namespace Cavaxis.Reports.Drawings;

/// <summary>Puts drawings under one another on one paper.</summary>
public static class DrawingSheet
{
    /// <summary>Space between two drawings, mm.</summary>
    public const double GapMm = 4;

    /// <summary>Stacks drawings.</summary>
    /// <param name="title">Short name of the whole.</param>
    /// <param name="head">Lines of words above the first drawing.</param>
    /// <param name="drawings">At least one drawing, from the top.</param>
    /// <returns>One drawing whose description holds those of its parts.</returns>
    public static Drawing Of(string title, IReadOnlyList<string> head, IReadOnlyList<Drawing> drawings)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(drawings);
        double width = drawings.Max(static d => d.WidthMm);
        List<DrawingItem> items = [];
        double top = 0;
        foreach (string line in head.SelectMany(h => TextMetrics.Wrapped(h, width, 8)))
        {
            top += 4.2;
            items.Add(new Text(new Point(0, top), line, 8));
        }

        top += head.Count > 0 ? GapMm : 0;
        foreach (Drawing drawing in drawings)
        {
            double down = top;
            items.AddRange(drawing.Items.Select(item => Moved(item, down)));
            top += drawing.HeightMm + GapMm;
        }

        string words = string.Join(' ', drawings.Select(static d => d.Description));
        return new Drawing(width, top - GapMm, title, words, items);
    }

    private static DrawingItem Moved(DrawingItem item, double down) => item switch
    {
        Line line => line with { From = line.From.Moved(0, down), To = line.To.Moved(0, down) },
        Polyline polyline => polyline with { Points = [.. polyline.Points.Select(p => p.Moved(0, down))] },
        Polygon polygon => polygon with { Points = [.. polygon.Points.Select(p => p.Moved(0, down))] },
        Rectangle { Bounds: var b } rectangle => rectangle with { Bounds = new Box(b.Left, b.Top + down, b.Right, b.Bottom + down) },
        Circle circle => circle with { Centre = circle.Centre.Moved(0, down) },
        Arrow arrow => arrow with { From = arrow.From.Moved(0, down), To = arrow.To.Moved(0, down) },
        Text text => text with { At = text.At.Moved(0, down) },
        _ => throw new NotSupportedException($"{item.GetType().Name} cannot be moved."),
    };
}
