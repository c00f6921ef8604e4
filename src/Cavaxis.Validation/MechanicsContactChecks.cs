using System.Collections.Immutable;
using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Relaxing;
using Cavaxis.Mechanics.Rods;
using Cavaxis.Mechanics.Walls;
using Cavaxis.Quantities;

namespace Cavaxis.Validation;

/// <summary>Friction of a rod that is pulled around a cylinder.</summary>
public sealed class MechanicsContactChecks : IReferenceChecks
{
    private const double RadiusMm = 20;
    private const int Wrapped = 120;
    private const int Straight = 20;

    private static readonly Source Capstan = new("Euler-Eytelwein, T2/T1 = exp(mu theta)", Certainty.ClosedForm);

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        foreach ((double friction, double turns) in new[] { (0.05, 1.0), (0.1, 0.5), (0.1, 1), (0.2, 0.5), (0.2, 1) })
        {
            double angle = 2 * Math.PI * turns;
            yield return MechanicsRodChecks.Row(
                string.Create(CultureInfo.InvariantCulture, $"Ratio of tensions of a rod pulled around a cylinder, {360 * turns:F0} degrees, friction {friction}"),
                Capstan, Math.Exp(friction * angle), Pulled(friction, angle), "1", Tolerance.Relative, 0.01);
        }
    }

    /// <summary>Pulls the first end along its own line against 1 N on the other until all slides.</summary>
    private static double Pulled(double friction, double angle)
    {
        double piece = RadiusMm * angle / Wrapped;
        Vector3D[] nodes = [.. Enumerable.Range(-Straight, Wrapped + (2 * Straight) + 1).Select(i => Place(i * piece, angle))];
        int last = nodes.Length - 1;
        RodChain chain = RodChain.Uniform(last, last * piece, new RodEdge(0, 5000, 0.05, 0.05), 0);
        RodSupports supports = RodSupports.None(nodes.Length).WithNode(0).WithAngle(0);
        Vector3D pull = 0.3 * (nodes[0] - nodes[1]).Unit;
        RodState state = RodState.Along(nodes);
        ImmutableArray<NodeGrip> grips = [];
        double tension = double.NaN;
        for (int k = 0; k < 3; k++)
        {
            RelaxationResult rest = Relaxation.Relax(new RelaxationTask(chain, state with { NodesMm = state.NodesMm.SetItem(0, state.NodesMm[0] + pull) }, supports)
            {
                Wall = new Wall(new CylinderOutside(RadiusMm), friction),
                Grips = grips,
                LoadsN = [.. new Vector3D[last], (nodes[last] - nodes[last - 1]).Unit],
            });
            (state, grips, tension) = (rest.State, rest.Grips, rest.IsAtRest ? rest.HeldForcesN[0].Length : double.NaN);
        }

        return tension;
    }

    /// <summary>A helix of small pitch, so that a whole turn passes by itself, with its tangents at both ends.</summary>
    private static Vector3D Place(double arc, double angle)
    {
        double turned = Math.Clamp(arc / RadiusMm, 0, angle);
        (double sin, double cos) = Math.SinCos(turned);
        return new Vector3D(RadiusMm * cos, RadiusMm * sin, 0.02 * arc) + ((arc - (RadiusMm * turned)) * new Vector3D(-sin, cos, 0));
    }
}
