using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Landmarks;

namespace Cavaxis.Imaging.Tomography;

/// <summary>Landmarks on a centreline: those a person has confirmed, and proposals for the others where the calibre shows them.</summary>
internal static class LandmarkFinder
{
    /// <summary>How far apart two readers put a junction on one scan, as a standard deviation, mm (assumption of this project).</summary>
    public const double ConfirmedSdMm = 3;

    private const double ProposedSdMm = 2;

    /// <summary>Farther from the line than this a confirmed landmark does not belong to it, mm.</summary>
    private const double FarthestMm = 40;

    /// <summary>Upper edge of the right hepatic vein below the inferior junction, mm: what adults show with room to both sides.</summary>
    private const double HepaticFromMm = 6;
    private const double HepaticToMm = 60;
    private const double RenalFromMm = 70;
    private const double RenalToMm = 190;
    private const double BulgeRatio = 1.3;

    // The roof of a branch slopes; its upper edge is taken where most of the bulge is there (set on the one open scan that shows it).
    private const double RoofShare = 0.7;

    /// <summary>Error of the upper edge of a branch, mm: 1 mm off two readings of that scan, 8 mm below the truth in the one phantom of four that showed a bulge.</summary>
    private const double BranchSdMm = 8;

    /// <summary>The junctions.</summary>
    /// <param name="request">What a person gave.</param>
    /// <param name="line">The centreline.</param>
    /// <param name="sections">The wall along it.</param>
    /// <returns>Superior and inferior junction.</returns>
    public static (AxisLandmark Superior, AxisLandmark Inferior) Junctions(TraceRequest request, SpaceCurve line, IReadOnlyList<LumenSection> sections)
    {
        (Widening? upper, Widening? lower, string reason) = AtrialStretch.Find(sections);
        return (Junction(request, line, CavalLandmark.Scaj, upper, reason), Junction(request, line, CavalLandmark.Icaj, lower, reason));
    }

    /// <summary>All others.</summary>
    /// <param name="request">What a person gave.</param>
    /// <param name="line">The centreline.</param>
    /// <param name="sections">The wall along it.</param>
    /// <param name="inferior">The inferior junction.</param>
    /// <returns>One of each kind.</returns>
    public static IEnumerable<AxisLandmark> Others(TraceRequest request, SpaceCurve line, IReadOnlyList<LumenSection> sections, AxisLandmark inferior)
    {
        yield return Confirmed(request, line, CavalLandmark.BrachiocephalicConfluence)
            ?? AxisLandmark.Missing(CavalLandmark.BrachiocephalicConfluence, "not looked for: show it on the pictures");
        yield return Confirmed(request, line, CavalLandmark.HepaticVein) ?? Bulge(line, sections, inferior, CavalLandmark.HepaticVein, HepaticFromMm, HepaticToMm);
        yield return Confirmed(request, line, CavalLandmark.RenalVein) ?? Bulge(line, sections, inferior, CavalLandmark.RenalVein, RenalFromMm, RenalToMm);
        yield return Confirmed(request, line, CavalLandmark.IliacConfluence)
            ?? AxisLandmark.Missing(CavalLandmark.IliacConfluence, "not looked for: show it on the pictures");
    }

    private static AxisLandmark Junction(TraceRequest request, SpaceCurve line, CavalLandmark landmark, Widening? widening, string reason) =>
        Confirmed(request, line, landmark)
        ?? (widening is Widening found
            ? new AxisLandmark(
                landmark, LandmarkOrigin.Proposed, found.AtMm, Math.Sqrt((ProposedSdMm * ProposedSdMm) + (found.SdMm * found.SdMm)), line.At(found.AtMm), JunctionEdge.Unknown,
                "the vein begins to widen here")
            : AxisLandmark.Missing(landmark, reason));

    private static AxisLandmark? Confirmed(TraceRequest request, SpaceCurve line, CavalLandmark landmark)
    {
        if (request.Confirmed.FirstOrDefault(c => c.Landmark == landmark) is not ConfirmedLandmark confirmed)
        {
            return null;
        }

        (double arc, double distance) = line.Nearest(confirmed.Place);
        return distance <= FarthestMm
            ? new AxisLandmark(landmark, LandmarkOrigin.Confirmed, arc, ConfirmedSdMm, line.At(arc), confirmed.Edge, "confirmed on the pictures")
            : AxisLandmark.Missing(landmark, FormattableString.Invariant($"the confirmed place lies {distance:F0} mm beside the line: show it on the vein"));
    }

    // A branch makes the section bulge: wider than the vein above and below, and to one side. Its upper edge is where that begins.
    private static AxisLandmark Bulge(SpaceCurve line, IReadOnlyList<LumenSection> sections, AxisLandmark inferior, CavalLandmark landmark, double fromMm, double toMm)
    {
        if (!inferior.IsThere)
        {
            return AxisLandmark.Missing(landmark, "the inferior junction, from which it would be looked for, is not known");
        }

        LumenSection[] within = [.. sections.Where(s => s.ArcMm >= inferior.ArcMm + fromMm && s.ArcMm <= inferior.ArcMm + toMm)];
        if (within.Length < 12 || within[^1].ArcMm < inferior.ArcMm + fromMm + 20)
        {
            return AxisLandmark.Missing(landmark, "the line does not reach far enough below the inferior junction");
        }

        double usual = Spread.Median(within.Select(static s => s.AreaMm2));
        int peak = Enumerable.Range(1, within.Length - 2).MaxBy(i => within[i].AreaMm2);
        int from = peak;
        while (from > 0 && within[from].AreaMm2 > usual + (RoofShare * (within[peak].AreaMm2 - usual)))
        {
            from--;
        }

        bool bulges = within[peak].AreaMm2 > BulgeRatio * usual && from > 0 && within[^1].AreaMm2 < BulgeRatio * usual;
        double at = within[from].ArcMm;
        return bulges
            ? new AxisLandmark(landmark, LandmarkOrigin.Proposed, at, BranchSdMm, line.At(at), JunctionEdge.Unknown, "the section bulges from here on, as at a branch")
            : AxisLandmark.Missing(landmark, "no section bulges as at a branch");
    }
}
