using System.Collections.Immutable;
using Cavaxis.Arteries.Scaling;
using Cavaxis.Arteries.Tree;

namespace Cavaxis.Arteries.Beats;

/// <summary>Places along the aorta from the valve to its fork.</summary>
public sealed class AortaPath
{
    private const double SpacingM = 0.005;
    private static readonly string[] Names = ["aortic_root", "ascending_aorta", "aortic_arch", "thoracic_aorta", "abdominal_aorta"];
    private readonly ImmutableArray<(int Segment, double StartM, double LengthM, ArterySegment Table)> parts;

    /// <summary>The path in a tree.</summary>
    /// <param name="tree">The tree.</param>
    public AortaPath(PatientTree tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        double at = 0;
        List<(int, double, double, ArterySegment)> found = [];
        for (int i = 0; i < tree.Segments.Length; i++)
        {
            PatientSegment s = tree.Segments[i];
            if (Names.Any(name => s.Table.Name.StartsWith(name, StringComparison.Ordinal)))
            {
                found.Add((i, at, s.LengthM, s.Table));
                at += s.LengthM;
            }
        }

        parts = [.. found];
        LengthM = at;
        int count = Math.Max(2, (int)(at / SpacingM));
        PlacesM = [.. Enumerable.Range(0, count).Select(i => (i + 0.5) * at / count)];
    }

    /// <summary>Length from valve to fork, m.</summary>
    public double LengthM { get; }

    /// <summary>Distances of the places from the valve, m.</summary>
    public ImmutableArray<double> PlacesM { get; }

    /// <summary>Segment and distance from its beginning of a place on the path.</summary>
    /// <param name="distanceM">Distance from the valve, m.</param>
    /// <returns>Index of the segment, distance in it in m, and its entry in the table.</returns>
    public (int Segment, double WithinM, ArterySegment Table) Locate(double distanceM)
    {
        for (int i = parts.Length - 1; i >= 0; i--)
        {
            if (distanceM >= parts[i].StartM || i == 0)
            {
                return (parts[i].Segment, Math.Clamp(distanceM - parts[i].StartM, 0, parts[i].LengthM), parts[i].Table);
            }
        }

        return (parts[0].Segment, 0, parts[0].Table);
    }

    /// <summary>Where a place on the path lies in the drawing.</summary>
    /// <param name="distanceM">Distance from the valve, m.</param>
    /// <returns>The point.</returns>
    public LayoutPoint OnDrawing(double distanceM)
    {
        (int segment, double within, ArterySegment table) = Locate(distanceM);
        double left = within / parts.First(p => p.Segment == segment).LengthM * Length(table.Course);
        for (int i = 1; i < table.Course.Length; i++)
        {
            LayoutPoint a = table.Course[i - 1];
            LayoutPoint b = table.Course[i];
            double piece = Distance(a, b);
            if (left <= piece || i == table.Course.Length - 1)
            {
                double share = piece == 0 ? 0 : Math.Min(1, left / piece);
                return new LayoutPoint(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y)));
            }

            left -= piece;
        }

        return table.Course[0];
    }

    private static double Length(ImmutableArray<LayoutPoint> course) => course.Zip(course.Skip(1), Distance).Sum();

    private static double Distance(LayoutPoint a, LayoutPoint b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
