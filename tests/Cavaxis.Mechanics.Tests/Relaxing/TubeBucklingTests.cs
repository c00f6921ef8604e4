using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Tests.Walls;
using Cavaxis.Mechanics.Walls;

namespace Cavaxis.Mechanics.Tests.Relaxing;

/// <summary>A heavy rod on the floor of a tube that is pressed along it: straight, then a sine, then turns about the tube.</summary>
public class TubeBucklingTests
{
    private const double ClearanceMm = 2;
    private const double WeightNPerMm = 1e-3;
    private const double StiffnessNMm2 = 1000;
    private const int HalfWaves = 20;
    private const int Pieces = 16 * HalfWaves;

    [Fact]
    public void With_growing_load_it_lies_straight_then_as_a_sine_then_in_turns_and_the_mirror_image_likewise()
    {
        // Loads by √(EI w/r): sine from 2 (Dawson and Paslay), helix 2.83 (Chen, Lin and Cheatham) to 3.66 (Wu and Juvkam-Wold).
        Assert.InRange(Swing(1.9, 1), 0, 0.01);
        Assert.InRange(Swing(2.3, 1), 0.2, Math.PI);
        Assert.True(Swing(3.66, 1) > 2 * Math.PI);
        Assert.Equal(Swing(2.3, 1), Swing(2.3, -1), 1e-3);
    }

    /// <summary>Largest angle about the tube between two nodes.</summary>
    private static double Swing(double load, double sign)
    {
        double length = HalfWaves * Math.PI / Math.Pow(WeightNPerMm / (StiffnessNMm2 * ClearanceMm), 0.25);
        double piece = length / Pieces;
        Vector3D[] nodes = [.. Enumerable.Range(0, Pieces + 1).Select(i =>
        {
            double angle = sign * 0.005 * Math.Sin(Math.PI * HalfWaves * i / Pieces);
            return new Vector3D(i * piece, ClearanceMm * Math.Sin(angle), -ClearanceMm * Math.Cos(angle));
        })];
        Vector3D weight = new(0, 0, -WeightNPerMm * piece);
        double axial = load * Math.Sqrt(StiffnessNMm2 * WeightNPerMm / ClearanceMm);
        RelaxationResult rest = Relaxation.Relax(
            new RelaxationTask(
                RodChain.Uniform(Pieces, length, new RodEdge(0, 1e5, StiffnessNMm2, StiffnessNMm2), 0),
                RodState.Along(nodes),
                RodSupports.None(Pieces + 1).WithNode(0).WithAngle(0).WithNode(Pieces, false, true, true))
            {
                LoadsN = [.. Enumerable.Repeat(weight, Pieces), new Vector3D(-axial, 0, 0)],
                Wall = new Wall(new PathTube().Then(1.2 * length, 0, ClearanceMm), 0),
            },
            new RelaxationSettings { MostSteps = 6000 });
        Assert.True(rest.IsAtRest, rest.Fault?.Words);
        (double turned, double low, double high) = (0, 0, 0);
        foreach ((Vector3D a, Vector3D b) in rest.State.NodesMm.Zip(rest.State.NodesMm.Skip(1)))
        {
            turned += Math.Atan2((a.Y * b.Z) - (a.Z * b.Y), (a.Y * b.Y) + (a.Z * b.Z));
            (low, high) = (Math.Min(low, turned), Math.Max(high, turned));
        }

        return high - low;
    }
}
