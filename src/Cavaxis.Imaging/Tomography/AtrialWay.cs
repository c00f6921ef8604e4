using Cavaxis.Anatomy.Space;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// The line through the atrium as the population model has it (Anatomy/Axis/AtrialPath): between the mouths, along both veins at its ends,
/// bent as little as can be: the cubic over the chord.
/// </summary>
internal static class AtrialWay
{
    private const int Pieces = 40;

    /// <summary>How far along a vein from its mouth its direction is taken, mm.</summary>
    private const double FarMm = 35;

    /// <summary>Next to the mouth the section is no longer that of the vein alone, mm.</summary>
    private const double NearMm = 3;

    private const double ShortestMm = 12;

    /// <summary>So far before a step of the calibre the line is already drawn towards what lies beyond, mm.</summary>
    private const double BeforeStepMm = 6;

    /// <summary>Directions of both veins and the trunk line.</summary>
    /// <param name="line">The centreline.</param>
    /// <param name="sections">The wall along it.</param>
    /// <param name="superior">Superior junction.</param>
    /// <param name="inferior">Inferior junction.</param>
    /// <returns>Null where a junction is missing or a vein is seen over less than 12 mm.</returns>
    public static CavalDirections? Directions(SpaceCurve line, IReadOnlyList<LumenSection> sections, AxisLandmark superior, AxisLandmark inferior)
    {
        if (!superior.IsThere || !inferior.IsThere || inferior.ArcMm - superior.ArcMm < ShortestMm)
        {
            return null;
        }

        double above = superior.ArcMm - NearMm;
        double below = inferior.ArcMm + NearMm;
        double top = Math.Max(0, superior.ArcMm - FarMm);
        double bottom = Math.Min(line.LengthMm, inferior.ArcMm + FarMm);
        if (CalibreStep.First(sections, superior.ArcMm, true) is CalibreStep higher)
        {
            top = Math.Max(top, Math.Min(higher.ArcMm + BeforeStepMm, above - ShortestMm));
        }

        if (CalibreStep.First(sections, inferior.ArcMm, false) is CalibreStep lower)
        {
            bottom = Math.Min(bottom, Math.Max(lower.ArcMm - BeforeStepMm, below + ShortestMm));
        }

        return above - top < ShortestMm || bottom - below < ShortestMm
            ? null
            : new CavalDirections(VesselDirection.Of(line, top, above), VesselDirection.Of(line, below, bottom), inferior.Place - superior.Place);
    }

    /// <summary>The line with its part through the atrium replaced.</summary>
    /// <param name="line">The centreline.</param>
    /// <param name="superior">Superior junction.</param>
    /// <param name="inferior">Inferior junction.</param>
    /// <param name="directions">Directions of the veins.</param>
    /// <returns>The new line.</returns>
    public static SpaceCurve Laid(SpaceCurve line, AxisLandmark superior, AxisLandmark inferior, CavalDirections directions)
    {
        Vector3D chord = directions.Trunk;
        Vector3D along = chord.Unit;
        Vector3D start = chord.Length / Math.Max(0.3, directions.Svc.Towards.Dot(along)) * directions.Svc.Towards;
        Vector3D finish = chord.Length / Math.Max(0.3, directions.Ivc.Towards.Dot(along)) * directions.Ivc.Towards;
        List<Vector3D> points = [.. Stretch(line, 0, superior.ArcMm - 1)];
        for (int i = 0; i <= Pieces; i++)
        {
            double t = i / (double)Pieces;
            double late = t * t * (3 - (2 * t));
            points.Add(superior.Place + (late * chord) + (t * (1 - t) * (1 - t) * start) + (t * t * (t - 1) * finish));
        }

        points.AddRange(Stretch(line, inferior.ArcMm + 1, line.LengthMm));
        return new SpaceCurve(points).Resampled(1);
    }

    private static IEnumerable<Vector3D> Stretch(SpaceCurve line, double from, double to)
    {
        int pieces = Math.Max(1, (int)Math.Round((to - from) / 1));
        return to <= from ? [] : Enumerable.Range(0, pieces + 1).Select(i => line.At(from + (i * (to - from) / pieces)));
    }
}
