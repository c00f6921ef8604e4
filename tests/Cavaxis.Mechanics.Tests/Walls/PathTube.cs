using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;

namespace Cavaxis.Mechanics.Tests.Walls;

/// <summary>A tube about a path of straight lines and circular arcs in the plane z = 0, with its exact distance.</summary>
internal sealed class PathTube : ILumen
{
    private readonly List<(bool Arc, Vector3D From, Vector3D Along, double Length, double Turn, double Radius)> pieces = [];
    private Vector3D at;
    private double heading;

    /// <summary>Adds a piece: a straight line where the turn is zero.</summary>
    public PathTube Then(double length, double turnRad, double radius)
    {
        Vector3D along = new(Math.Cos(heading), Math.Sin(heading), 0);
        pieces.Add((turnRad != 0, at, along, length, turnRad, radius));
        if (turnRad == 0)
        {
            at += length * along;
            return this;
        }

        double r = length / turnRad;
        Vector3D centre = at + (r * new Vector3D(-along.Y, along.X, 0));
        heading += turnRad;
        at = centre - (r * new Vector3D(-Math.Sin(heading), Math.Cos(heading), 0));
        return this;
    }

    public LumenPoint At(Vector3D point)
    {
        double best = double.PositiveInfinity;
        Vector3D outward = default;
        foreach ((bool arc, Vector3D from, Vector3D along, double length, double turn, double radius) in pieces)
        {
            Vector3D nearest = arc ? OnArc(point, from, along, length, turn) : from + (Math.Clamp((point - from).Dot(along), 0, length) * along);
            Vector3D away = point - nearest;
            double distance = away.Length - radius;
            if (distance < best)
            {
                best = distance;
                outward = away.Length > 1e-9 ? away.Unit : new Vector3D(0, 0, 1);
            }
        }

        return new LumenPoint(best, outward);
    }

    private static Vector3D OnArc(Vector3D point, Vector3D from, Vector3D along, double length, double turn)
    {
        double r = length / turn;
        Vector3D side = new(-along.Y, along.X, 0);
        Vector3D centre = from + (r * side);
        Vector3D way = point - centre;
        double angle = Math.Atan2(way.Dot(along), -Math.Sign(r) * way.Dot(side));
        double kept = Math.Clamp(angle, 0, Math.Abs(turn));
        return centre + (Math.Abs(r) * ((Math.Sin(kept) * along) - (Math.Sign(r) * Math.Cos(kept) * side)));
    }
}
