using Cavaxis.Anatomy.Landmarks;
using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>What a clinician would ask about a traced line before believing that it is the vein meant.</summary>
internal static class CautionFinder
{
    /// <summary>Blood without contrast reads 30 to 60 HU and less with few red cells; effusions, bowel and urine mostly less than 20 (common teaching, from memory).</summary>
    private const double FluidHu = 25;

    /// <summary>More than the mouths of right-sided veins lie apart sideways in any scan or phantom seen here, mm (assumption of this project).</summary>
    private const double LeftMm = 25;

    private const double LimeAboveHu = 150;
    private const double LeastLimeHu = 250;
    private const int LeastSpots = 3;
    private const double OpenShare = 0.3;
    private const double OpenMm = 8;
    private const double TissueHu = 50;
    private const double MetalAboveHu = 108;

    /// <summary>Looks at all.</summary>
    /// <param name="scan">The scan as it is, nothing clipped.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="seeds">What the scan shows at the seeds.</param>
    /// <param name="noiseHu">Spread inside of the vessel, HU.</param>
    /// <returns>None where nothing is peculiar.</returns>
    public static IReadOnlyList<TraceCaution> Of(ScanVolume scan, TracedAxis axis, IReadOnlyList<SeedReading> seeds, double noiseHu)
    {
        ScanSampler sampler = new(scan);
        AxisLandmark superior = axis[CavalLandmark.Scaj];
        AxisLandmark inferior = axis[CavalLandmark.Icaj];
        bool atrium = superior.IsThere && inferior.IsThere;
        LumenSection[] vein = [.. axis.Sections.Where(s => !atrium || s.ArcMm < superior.ArcMm || s.ArcMm > inferior.ArcMm)];
        double high = seeds.Max(static s => s.Hu);
        return [.. new[]
        {
            Neighbour(sampler, vein, noiseHu, high), Lime(sampler, vein, high), Atrium(axis, atrium), Left(axis, superior, inferior), Fluid(seeds),
            Step(axis, superior, true), Step(axis, inferior, false), Open(vein),
        }.OfType<TraceCaution>()];
    }

    private static TraceCaution? Neighbour(ScanSampler sampler, LumenSection[] vein, double noiseHu, double high)
    {
        double inside = Spread.Median(vein.Select(static s => s.InsideHu));
        double tolerance = Math.Max(15, Math.Max(2.5 * noiseHu, 0.3 * Math.Abs(inside - TissueHu)));
        return BesideVessel.Find(sampler, vein, tolerance, high + MetalAboveHu) is BesideVessel other
            ? new TraceCaution(TraceCautionKind.NeighbourAlike, FormattableString.Invariant(
                $"Beside the line runs something round that reads alike: {Where(other.Towards)} of it, walls {other.GapMm:F0} mm apart, {other.DiameterMm:F0} mm wide and {other.Hu:F0} HU, seen beside {other.Sections} of {other.LookedAt} sections; what was traced is {Spread.Median(vein.Select(static s => s.DiameterMm)):F0} mm wide and reads {inside:F0} HU. An artery beside its vein looks so, and brightness does not tell them here; so can muscle, bowel or a lobe of the liver. Follow both on the pictures to where they come from, and confirm which of them the seeds lie in."))
            : null;
    }

    // Spots of the wall: bright there, and not bright a little further out, as bone is, nor further in, as a lead is.
    private static TraceCaution? Lime(ScanSampler sampler, LumenSection[] vein, double high)
    {
        double limit = Math.Max(LeastLimeHu, high + LimeAboveHu);
        double brightest = 0;
        List<double> at = [];
        foreach (LumenSection section in vein)
        {
            int spots = 0;
            for (int ray = 0; ray < section.RadiiMm.Count; ray++)
            {
                (double sin, double cos) = Math.SinCos(2 * Math.PI * ray / section.RadiiMm.Count);
                Vector3D way = (cos * section.Across) + (sin * section.Upright);
                double Most(double from, double to) => Enumerable.Range(0, 5).Max(n => sampler.At(section.Centre + ((section.RadiiMm[ray] + from + (n * (to - from) / 4)) * way)));
                double here = Most(-1.5, 2);
                if (here > limit && Most(5, 8) < limit && Most(-5, -3) < limit)
                {
                    spots++;
                    brightest = Math.Max(brightest, here);
                }
            }

            if (spots >= 2)
            {
                at.Add(section.ArcMm);
            }
        }

        return at.Count < LeastSpots ? null : new TraceCaution(TraceCautionKind.LimeAtWall, FormattableString.Invariant(
            $"Spots of up to {brightest:F0} HU lie in or beside the wall in {at.Count} sections, the first at {at[0]:F0} mm along the line: lime lies in walls of arteries far more often than of veins; a lead, a clip, an edge of bone or the artery beside the vein can look so too. Look whether this is the artery."));
    }

    private static TraceCaution? Atrium(TracedAxis axis, bool atrium) => atrium ? null : new TraceCaution(
        TraceCautionKind.NoAtrium, FormattableString.Invariant(
            $"No right atrium was found on these {axis.Line.LengthMm:F0} mm, so that no span, bend or diameter of a caval vein is read from it. A line from the SVC to the IVC passes one: where it should have, the seeds lie in another vessel (aorta, azygos vein, a left-sided vein), or the atrium is to be shown by confirming both junctions."));

    private static TraceCaution? Left(TracedAxis axis, AxisLandmark superior, AxisLandmark inferior)
    {
        if (!superior.IsThere || !inferior.IsThere)
        {
            return null;
        }

        double left = Spread.Median(axis.Sections.Where(s => s.ArcMm <= superior.ArcMm).Select(static s => s.Centroid.X)) - Spread.Median(axis.Sections.Where(s => s.ArcMm >= inferior.ArcMm).Select(static s => s.Centroid.X));
        return left <= LeftMm ? null : new TraceCaution(TraceCautionKind.LeftSided, FormattableString.Invariant(
            $"The vein above the atrium lies {left:F0} mm to the left of that below (looked at from {LeftMm:F0} mm on): a left superior vena cava runs so, into the coronary sinus. A cannula from the right neck takes another way. Look for a second vein on the right, and whether left and right of the scan are what they say."));
    }

    private static TraceCaution? Fluid(IReadOnlyList<SeedReading> seeds)
    {
        double least = Math.Round(seeds.Min(static s => s.Hu)) + 0.0;
        return least >= FluidHu ? null : new TraceCaution(TraceCautionKind.ReadsLikeFluid, FormattableString.Invariant(
            $"A seed reads {least:F0} HU. Blood without contrast reads about 30 to 60 HU, less with few red cells; pleural and other effusions, bowel and urine mostly less than {FluidHu:F0} HU. Look whether the seed lies in a vein."));
    }

    private static TraceCaution? Step(TracedAxis axis, AxisLandmark mouth, bool isAbove) =>
        mouth.IsThere && CalibreStep.First(axis.Sections, mouth.ArcMm, isAbove) is CalibreStep step
            ? new TraceCaution(TraceCautionKind.CalibreStep, FormattableString.Invariant(
                $"{step.ArcMm:F0} mm along the line the vein {(isAbove ? "above" : "below")} the atrium narrows from {step.NearMm:F0} to {step.FarMm:F0} mm within a centimetre: a confluence, a line that went into a branch, or contrast that fills only a part of the vein. Beyond it the middle of what is seen need not be that of the vein; the direction of the vein is taken on this side of it."))
            : null;

    private static TraceCaution? Open(LumenSection[] vein)
    {
        LumenSection[] open = [.. vein.Where(static s => s.OpenShare > OpenShare)];
        double length = open.Length * VesselWalk.StepMm;
        return length < OpenMm ? null : new TraceCaution(TraceCautionKind.OpenStretch, FormattableString.Invariant(
            $"Over {length:F0} mm of vein, first at {open[0].ArcMm:F0} mm along the line, the wall was not seen over a third of the way round: what lies beside it (a branch, liver, fluid, muscle) looks the same. Diameters there are left out; look at the line there."));
    }

    private static string Where(Vector3D towards)
    {
        string[] words =
        [
            .. new[] { (towards.X, "left", "right"), (towards.Y, "behind", "in front"), (towards.Z, "above", "below") }
                .Where(static t => Math.Abs(t.Item1) > 0.4).OrderByDescending(static t => Math.Abs(t.Item1)).Select(static t => t.Item1 > 0 ? t.Item2 : t.Item3),
        ];
        return words.Length == 0 ? "beside" : string.Join(" and ", words);
    }
}
