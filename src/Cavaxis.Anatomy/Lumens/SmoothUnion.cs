using System.Collections.Immutable;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Anatomy.Lumens;

/// <summary>
/// Tubes joined into one lumen. Two distances closer to each other than k are blended by the quadratic polynomial
/// min(a, b) − (k − |a − b|)²/(4k), whose gradient is continuous; the wall lies at most k/4 outside of that of the nearest part, where two
/// parts are equally near, and nowhere inside.
/// </summary>
public sealed class SmoothUnion : ILumen
{
    /// <summary>Joins tubes.</summary>
    /// <param name="parts">The tubes, at least one; the largest first is quickest.</param>
    /// <param name="blendMm">k, mm, above zero.</param>
    internal SmoothUnion(IEnumerable<SweptTube> parts, double blendMm) => (Parts, BlendMm) = ([.. parts], blendMm);

    /// <summary>The tubes.</summary>
    public ImmutableArray<SweptTube> Parts { get; }

    /// <summary>Width k of the blend, mm.</summary>
    public double BlendMm { get; }

    /// <inheritdoc/>
    public LumenPoint At(Vector3D point)
    {
        LumenPoint joined = Parts[0].At(point);
        for (int i = 1; i < Parts.Length; i++)
        {
            // A part that is farther than the blend reaches changes nothing.
            if (Parts[i].TryAt(point, joined.DistanceMm + BlendMm, out LumenPoint at))
            {
                joined = Joined(joined, at);
            }
        }

        return joined;
    }

    private LumenPoint Joined(LumenPoint a, LumenPoint b)
    {
        (LumenPoint near, LumenPoint far) = a.DistanceMm <= b.DistanceMm ? (a, b) : (b, a);
        double left = BlendMm - (far.DistanceMm - near.DistanceMm);
        if (left <= 0)
        {
            return near;
        }

        double share = left / (2 * BlendMm);
        return new LumenPoint(near.DistanceMm - (left * left / (4 * BlendMm)), ((1 - share) * near.Outward) + (share * far.Outward));
    }
}
