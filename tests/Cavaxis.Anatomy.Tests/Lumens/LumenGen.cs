using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Anatomy.Space;
using CsCheck;

namespace Cavaxis.Anatomy.Tests.Lumens;

/// <summary>Random tubes, whole lumens and points near them.</summary>
internal static class LumenGen
{
    /// <summary>
    /// A winding tube: bends of up to 50 degrees on 30 to 60 mm have a radius of curvature of at least 23 mm, radii go up to 12 mm.
    /// </summary>
    public static Gen<TubeSketch> Tapering { get; } = Sketch(Gen.Double[4, 12].Array[4]);

    /// <summary>The same with one radius.</summary>
    public static Gen<TubeSketch> Even { get; } = Sketch(Gen.Double[4, 12].Select(static r => new[] { r, r }));

    /// <summary>A point beside a tube: the share of its length, a direction, and how far from the line in radii.</summary>
    public static Gen<(double Share, Vector3D Aside, double Radii)> Beside { get; } =
        Gen.Select(Gen.Double[0, 1], Vector(1).Where(static v => v.Length > 0.1), Gen.Double[0.02, 1.6], static (s, v, r) => (s, v.Unit, r));

    /// <summary>One of the anatomies that the population model draws for anybody.</summary>
    public static Gen<CavalLumen> Anatomy { get; } =
        from body in Bodies.Any
        from seed in Gen.UInt
        select Drawn(PopulationModel.For(body), seed);

    public static Gen<Vector3D> Vector(double size) =>
        Gen.Select(Gen.Double[-size, size], Gen.Double[-size, size], Gen.Double[-size, size], static (x, y, z) => new Vector3D(x, y, z));

    /// <summary>The place of a point beside a tube.</summary>
    public static Vector3D Place(SweptTube tube, (double Share, Vector3D Aside, double Radii) at)
    {
        double arc = tube.StartMm + (at.Share * (tube.EndMm - tube.StartMm));
        return tube.PointAt(arc) + (at.Radii * tube.RadiusAt(arc) * at.Aside);
    }

    /// <summary>On its line a tube has no one way out.</summary>
    public static bool IsOffTheLine(SweptTube tube, Vector3D at)
    {
        TubePoint nearest = tube.Nearest(at);
        return nearest.DistanceMm + tube.RadiusAt(nearest.ArcMm) > 0.5;
    }

    private static CavalLumen Drawn(AxisDistribution belief, uint seed) => new(LumenShape.OfSample(AxisSampler.Draw(belief, 1, seed), 0, seed));

    private static Gen<TubeSketch> Sketch(Gen<double[]> radii) =>
        from start in Vector(100)
        from heading in Vector(1).Where(static v => v.Length > 0.1)
        from bends in Gen.Select(Gen.Double[30, 60], Vector(1).Where(static v => v.Length > 0.1), Gen.Double[0, 50]).Array[1, 4]
        from chosen in radii
        select Made(start, heading.Unit, bends, chosen);

    /// <summary>Each bend turns by its angle into the plane of its vector.</summary>
    private static TubeSketch Made(Vector3D start, Vector3D heading, (double LengthMm, Vector3D Towards, double AngleDeg)[] bends, double[] radii)
    {
        Vector3D at = heading;
        List<(double, Vector3D)> made = [];
        foreach ((double length, Vector3D towards, double angle) in bends)
        {
            Vector3D other = at.Cross(towards).Length > 0.05 ? towards : new Vector3D(at.Y, at.Z, -at.X);
            at = Directions.Turned(at, other, angle);
            made.Add((length, at));
        }

        return new TubeSketch(start, heading, [.. made], radii);
    }
}
