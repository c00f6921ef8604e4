namespace Cavaxis.Anatomy.Lumens;

/// <summary>A radius that goes smoothly from one anchor to the next along a centreline, without a slope at the anchors.</summary>
/// <param name="anchors">Length along the line and radius, mm, in growing order of length.</param>
internal sealed class RadiusProfile(params (double ArcMm, double RadiusMm)[] anchors)
{
    /// <summary>Radius.</summary>
    /// <param name="arcMm">Length along the line, mm.</param>
    /// <returns>mm.</returns>
    public double At(double arcMm)
    {
        for (int i = 1; i < anchors.Length; i++)
        {
            if (arcMm < anchors[i].ArcMm)
            {
                (double start, double end) = (anchors[i - 1].ArcMm, anchors[i].ArcMm);
                double share = Math.Clamp((arcMm - start) / (end - start), 0, 1);
                double eased = share * share * (3 - (2 * share));
                return anchors[i - 1].RadiusMm + (eased * (anchors[i].RadiusMm - anchors[i - 1].RadiusMm));
            }
        }

        return anchors[^1].RadiusMm;
    }
}
