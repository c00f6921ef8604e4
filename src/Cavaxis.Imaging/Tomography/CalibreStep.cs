namespace Cavaxis.Imaging.Tomography;

/// <summary>
/// Where a vein narrows within a centimetre on the way from the atrium: a confluence, or contrast that fills only a part of it. Beyond, the middle of what
/// is seen need not be the middle of the vein.
/// </summary>
/// <param name="ArcMm">Length along the line, mm.</param>
/// <param name="NearMm">Diameter on the side of the atrium, mm.</param>
/// <param name="FarMm">Diameter beyond, mm.</param>
internal readonly record struct CalibreStep(double ArcMm, double NearMm, double FarMm)
{
    private const int Beside = 5;
    private const double MostShare = 0.88;
    private const double MouthMm = 4;

    /// <summary>Looks for the first one.</summary>
    /// <param name="sections">The wall, smoothed.</param>
    /// <param name="mouthMm">Where the vein opens into the atrium, mm along the line; not a number where that is not known.</param>
    /// <param name="isAbove">True for the vein above the atrium.</param>
    /// <returns>Null where the vein does not narrow like this.</returns>
    public static CalibreStep? First(IReadOnlyList<LumenSection> sections, double mouthMm, bool isAbove)
    {
        LumenSection[] vein = isAbove ? [.. sections.Where(s => s.ArcMm <= mouthMm - MouthMm).Reverse()] : [.. sections.Where(s => s.ArcMm >= mouthMm + MouthMm)];
        for (int i = Beside; i + Beside < vein.Length; i++)
        {
            double near = Spread.Median(vein.Skip(i - Beside).Take(Beside).Select(static s => s.DiameterMm));
            double far = Spread.Median(vein.Skip(i + 1).Take(Beside).Select(static s => s.DiameterMm));
            double usual = Spread.Median(vein.Take(i).Select(static s => s.DiameterMm));

            // The far side of a bulge is no step: there the vein comes back to what it was.
            if (far < MostShare * near && far < MostShare * usual)
            {
                return new CalibreStep(vein[i].ArcMm, near, far);
            }
        }

        return null;
    }
}
