using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Bench;

/// <summary>
/// An invented way from the groin to the upper chest: tract, iliac and caval veins that wind, an atrium, a side branch and
/// the vein above, joined by a soft minimum of distances. Not the anatomy of the program: a lumen of like cost and shape.
/// </summary>
internal sealed class BlendedVein : ILumen
{
    private const double BlendMm = 1.5;

    private readonly List<(Vector3D From, Vector3D Along, double Length, double Start, double End)> tubes = [];
    private readonly double[] distances;
    private readonly Vector3D[] directions;

    /// <summary>Makes a vein of its own shape.</summary>
    /// <param name="seed">Seed.</param>
    public BlendedVein(int seed)
    {
        Random chance = new(seed);
        double Around(double middle, double half) => middle + (half * ((2 * chance.NextDouble()) - 1));
        Vector3D at = default;
        Vector3D heading = new Vector3D(Around(0, 0.15), -Around(0.5, 0.15), 1).Unit;
        Skin = (at, heading);
        Add(ref at, heading, 45, 5.5, 5.5);
        for (int k = 0; k < 6; k++)
        {
            double radius = k < 3 ? Around(5.5, 1) : Around(10, 1.5);
            heading = new Vector3D(Around(k < 3 ? 0.25 : 0, 0.3), Around(k < 2 ? 0.3 : 0, 0.3), 1).Unit;
            Add(ref at, heading, Around(45, 10), radius, radius);
        }

        Vector3D branch = at;
        Add(ref at, new Vector3D(Around(0, 0.2), Around(0, 0.2), 1).Unit, 35, Around(12, 2), Around(12, 2));
        tubes.Add((branch, new Vector3D(0.9, Around(0, 0.3), 0.5).Unit, 60, 5, 4));
        Vector3D side = new(Around(4, 8), Around(-6, 8), 0);
        tubes.Add((at + side, new Vector3D(0, 0, 1), 30, Around(24, 4), Around(24, 4)));
        at += new Vector3D(0, 0, 45);
        Add(ref at, new Vector3D(Around(0, 0.2), Around(0, 0.2), 1).Unit, 120, Around(10, 1.5), 8);
        distances = new double[tubes.Count];
        directions = new Vector3D[tubes.Count];
    }

    /// <summary>Place and direction at the skin.</summary>
    public (Vector3D Point, Vector3D Direction) Skin { get; }

    /// <inheritdoc/>
    public LumenPoint At(Vector3D point)
    {
        double least = double.PositiveInfinity;
        for (int k = 0; k < distances.Length; k++)
        {
            (Vector3D from, Vector3D along, double length, double start, double end) = tubes[k];
            double share = Math.Clamp((point - from).Dot(along) / length, 0, 1);
            Vector3D away = point - (from + (share * length * along));
            double distance = away.Length;
            directions[k] = (distance > 1e-9 ? away / distance : default) - (share is > 0 and < 1 ? (end - start) / length * along : default);
            distances[k] = distance - (start + (share * (end - start)));
            least = Math.Min(least, distances[k]);
        }

        double sum = 0;
        Vector3D outward = default;
        for (int k = 0; k < distances.Length; k++)
        {
            double weight = Math.Exp((least - distances[k]) / BlendMm);
            sum += weight;
            outward += weight * directions[k];
        }

        return new LumenPoint(least - (BlendMm * Math.Log(sum)), outward / sum);
    }

    private void Add(ref Vector3D at, Vector3D heading, double length, double start, double end)
    {
        tubes.Add((at, heading, length, start, end));
        at += length * heading;
    }
}
