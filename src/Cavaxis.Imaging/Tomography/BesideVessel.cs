using Cavaxis.Anatomy.Space;
using Cavaxis.Imaging.Volumes;

namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// A round thing with a closed wall that reads like the traced vessel and runs beside it: in the groin and pelvis most often the artery of that vein, or the
/// vein of that artery. Which of the two is traced, the picture of one moment does not say.
/// </summary>
/// <param name="Sections">Sections beside which it was seen.</param>
/// <param name="LookedAt">Sections that were looked at.</param>
/// <param name="Towards">Where it lies from the traced vessel, unit vector.</param>
/// <param name="DiameterMm">Its diameter, mm.</param>
/// <param name="Hu">What it reads, HU.</param>
/// <param name="GapMm">Between both walls, mm.</param>
internal sealed record BesideVessel(int Sections, int LookedAt, Vector3D Towards, double DiameterMm, double Hu, double GapMm)
{
    private const double EveryMm = 8;
    private const int Ways = 16;
    private const double NearestMm = 3;
    private const double FarthestMm = 21;
    private const double StepMm = 3;
    private const double BallMm = 2.5;
    private const double NarrowestMm = 4;
    private const double WidestMm = 36;
    private const double MostOpen = 0.2;
    private const double LeastRound = 0.45;
    private const double AlikeHu = 25;
    private const double AlikeShare = 0.35;
    private const double TissueHu = 50;
    private const int LeastSections = 3;
    private const double LeastShare = 0.4;
    private const double AlikeWay = 0.5;

    /// <summary>Looks for the one that accompanies the line longest.</summary>
    /// <param name="sampler">The scan.</param>
    /// <param name="vein">Sections of the vessel, the atrium apart.</param>
    /// <param name="toleranceHu">What differs by more is no longer the same, HU.</param>
    /// <param name="metalHu">From here on a reading is metal, HU.</param>
    /// <returns>Null where none does over a good part of it.</returns>
    public static BesideVessel? Find(ScanSampler sampler, IReadOnlyList<LumenSection> vein, double toleranceHu, double metalHu)
    {
        double last = double.NegativeInfinity;
        List<LumenSection> looked = [];
        foreach (LumenSection section in vein.Where(static s => s.OpenShare <= MostOpen + 0.1))
        {
            if (section.ArcMm - last >= EveryMm)
            {
                looked.Add(section);
                last = section.ArcMm;
            }
        }

        List<BesideVessel>[] seen = new List<BesideVessel>[looked.Count];
        _ = Parallel.For(0, looked.Count, i => seen[i] = [.. Around(sampler, looked[i], toleranceHu, metalHu)]);
        BesideVessel[] all = [.. seen.SelectMany(static s => s)];
        BesideVessel[] best = [];
        foreach (BesideVessel one in all)
        {
            BesideVessel[] alike = [.. seen.Select(s => s.Where(o => o.Towards.Dot(one.Towards) > AlikeWay).MaxBy(o => o.Towards.Dot(one.Towards))).OfType<BesideVessel>()];
            best = alike.Length > best.Length ? alike : best;
        }

        return best.Length < LeastSections || best.Length < LeastShare * looked.Count
            ? null
            : new BesideVessel(
                best.Length,
                looked.Count,
                best.Aggregate(Vector3D.Zero, static (sum, b) => sum + b.Towards).Unit,
                Spread.Median(best.Select(static b => b.DiameterMm)),
                Spread.Median(best.Select(static b => b.Hu)),
                Spread.Median(best.Select(static b => b.GapMm)));
    }

    private static IEnumerable<BesideVessel> Around(ScanSampler sampler, LumenSection section, double toleranceHu, double metalHu)
    {
        double alike = Math.Max(AlikeHu, AlikeShare * Math.Abs(section.InsideHu - TissueHu));
        Vector3D middle = section.Centroid;
        List<LumenSection> found = [];
        for (int way = 0; way < Ways; way++)
        {
            double wall = section.RadiiMm[way * section.RadiiMm.Count / Ways];
            (double sin, double cos) = Math.SinCos(2 * Math.PI * way / Ways);
            Vector3D towards = (cos * section.Across) + (sin * section.Upright);
            for (double off = NearestMm; off <= FarthestMm; off += StepMm)
            {
                Vector3D at = section.Centre + ((wall + off) * towards);
                if (!sampler.Holds(at) || found.Exists(f => (f.Centroid - at).Length < f.DiameterMm / 2))
                {
                    continue;
                }

                double hu = SeedReading.Of(sampler, at, BallMm).Hu;
                if (Math.Abs(hu - section.InsideHu) <= alike && Round(sampler, section, at, hu, toleranceHu, metalHu) is LumenSection other)
                {
                    found.Add(other);
                    Vector3D from = other.Centroid - middle;
                    yield return new BesideVessel(1, 1, from.Unit, other.DiameterMm, hu, Math.Max(0, from.Length - ((section.DiameterMm + other.DiameterMm) / 2)));
                }
            }
        }
    }

    private static LumenSection? Round(ScanSampler sampler, LumenSection section, Vector3D at, double hu, double toleranceHu, double metalHu)
    {
        LumenSection other = WallFinder.Find(new RayFan(sampler, at, section.Across, section.Upright, metalHu), section.ArcMm, hu, toleranceHu, metalHu);
        double apart = (other.Centroid - section.Centroid).Length;
        return other.OpenShare <= MostOpen && other.DiameterMm is >= NarrowestMm and <= WidestMm && other.RadiiMm.Min() > LeastRound * other.DiameterMm / 2
            && other.RadiiMm.Max() < other.DiameterMm / 2 / LeastRound && apart > 0.4 * (section.DiameterMm + other.DiameterMm)
            ? other
            : null;
    }
}
