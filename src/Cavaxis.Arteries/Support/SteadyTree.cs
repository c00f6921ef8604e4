using Cavaxis.Arteries.Boundaries;
using Cavaxis.Arteries.Network;
using Cavaxis.Arteries.Numbers;
using Cavaxis.Arteries.Scaling;
using static Cavaxis.Arteries.Numbers.ArterialConstant;

namespace Cavaxis.Arteries.Support;

/// <summary>
/// Mean pressures and flows of the tree by resistances alone: parabolic profiles in the segments, the ring beside a cannula, the arterioles behind the
/// ends. Used for the leg's flow under varied inputs and to choose the flow of a distal perfusion cannula; the waves are left to the solver.
/// </summary>
public sealed class SteadyTree
{
    private readonly PatientTree tree;
    private readonly double[] resistance;
    private readonly double[] end;
    private readonly double[] conductance;
    private readonly double[] current;
    private readonly Dictionary<int, int> segmentTo = [];

    /// <summary>Prepares the resistances.</summary>
    /// <param name="tree">The patient's tree.</param>
    /// <param name="placement">Where a cannula lies; null for none.</param>
    /// <param name="friction">Friction beside the cannula relative to one in the middle.</param>
    /// <param name="endFactor">Factor on the resistance of the end of a segment, by its index; null for one everywhere.</param>
    public SteadyTree(PatientTree tree, CannulaPlacement? placement, double friction, Func<int, double>? endFactor = null)
    {
        ArgumentNullException.ThrowIfNull(tree);
        tree = placement?.Around(tree) ?? tree;
        this.tree = tree;
        resistance = [.. tree.Segments.Select(s => s.Resistance(tree.Beds.ViscosityPaS))];
        end = [.. tree.Segments.Select((s, i) => (s.EndResistancePaSPerM3 ?? 0) * (endFactor?.Invoke(i) ?? 1))];
        conductance = new double[end.Length];
        current = new double[end.Length];
        for (int i = 0; i < end.Length; i++)
        {
            segmentTo[tree.Segments[i].Table.To] = i;
        }

        foreach (FilledPiece piece in placement?.Pieces ?? [])
        {
            double share = piece.LengthM / tree.Segments[piece.Segment].LengthM;
            resistance[piece.Segment] = ((1 - share) * resistance[piece.Segment]) + (RingResistance(piece, friction) * piece.LengthM);
        }
    }

    /// <summary>Solves for all flows.</summary>
    /// <param name="rootPa">Mean pressure at the aortic root, Pa.</param>
    /// <param name="sources">Flows that enter at the beginning of segments: index of the segment and flow, m³/s.</param>
    /// <returns>Flow at the end of each segment, m³/s, and pressure there, Pa.</returns>
    public (double[] FlowM3PerS, double[] EndPa) Solve(double rootPa, params ReadOnlySpan<(int Segment, double FlowM3PerS)> sources)
    {
        double[] source = new double[end.Length];
        double rootSource = 0;
        foreach ((int segment, double flow) in sources)
        {
            if (segmentTo.TryGetValue(tree.Segments[segment].Table.From, out int before))
            {
                source[before] += flow;
            }
            else
            {
                rootSource += flow;
            }
        }

        // From the ends inwards: what hangs on the end of a segment draws conductance x pressure - current.
        for (int i = 0; i < end.Length; i++)
        {
            conductance[i] = end[i] > 0 ? 1 / end[i] : 0;
            current[i] = (conductance[i] * tree.Beds.OutflowPressurePa) + source[i];
        }

        for (int i = end.Length - 1; i >= 0; i--)
        {
            if (segmentTo.TryGetValue(tree.Segments[i].Table.From, out int before))
            {
                double shrink = 1 / (1 + (conductance[i] * resistance[i]));
                conductance[before] += conductance[i] * shrink;
                current[before] += current[i] * shrink;
            }
        }

        double[] q = new double[end.Length];
        double[] p = new double[end.Length];
        for (int i = 0; i < end.Length; i++)
        {
            double from = segmentTo.TryGetValue(tree.Segments[i].Table.From, out int before) ? p[before] : rootPa;
            q[i] = ((conductance[i] * from) - current[i]) / (1 + (conductance[i] * resistance[i]));
            p[i] = from - (resistance[i] * q[i]);
        }

        return (q, p);
    }

    /// <summary>Resistance of the ring between cannula and wall at the mean pressure, per length, Pa s/m⁴.</summary>
    private double RingResistance(FilledPiece piece, double friction)
    {
        PatientSegment s = tree.Segments[piece.Segment];
        double radius = 0.5 * (s.ProximalRadiusM + s.DistalRadiusM);
        double wall = s.WallM * radius / s.ProximalRadiusM;
        double root = (Math.Sqrt(Math.PI) * radius)
            + ((tree.Beds.MeanPressurePa - tree.ReferencePressurePa) / TubeLaw.Stiffness(radius, wall, s.ModulusPa));
        double blood = Math.Max((root * root) - piece.AreaM2, 0.02 * piece.AreaM2);
        return 8 * Math.PI * tree.Beds.ViscosityPaS / (blood * blood) * Math.Max(1, friction * LumenBody.RingFriction(piece.AreaM2, blood));
    }

    /// <summary>Friction beside the cannula that is taken.</summary>
    public static double UsualFriction => ArterialNumbers.Value(AnnulusFriction);
}
