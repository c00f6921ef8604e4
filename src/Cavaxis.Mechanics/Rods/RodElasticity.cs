using System.Runtime.Intrinsics;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;
using static Cavaxis.Mechanics.Rods.NodeDerivatives;

namespace Cavaxis.Mechanics.Rods;

/// <summary>
/// Energy of a discrete elastic rod with its first and second derivatives (Bergou et al. 2008 and 2010). With the
/// curvature binormal κb = 2 t₁ × t₂ / (1 + t₁·t₂), |κb| = 2 tan(φ/2), bending costs ½ B |κb − κ̄|² and twist ½ G (m − m̄)²
/// at each inner node, with 1/B and 1/G the sum of length over stiffness of the two half edges that meet there.
/// </summary>
internal sealed class RodElasticity
{
    private readonly NodeDerivatives node = new();
    private double[] rest = [];
    private double[] axial = [];
    private double[] bend = [];
    private double[] turn = [];
    private NaturalCurvature[] natural = [];
    private bool curved;
    private int count;

    /// <summary>Smallest bending stiffness of a node, N mm: a measure for what is small.</summary>
    public double LeastBendNMm { get; private set; }

    /// <summary>Mean rest length of the edges, mm.</summary>
    public double MeanLengthMm { get; private set; }

    /// <summary>Takes the properties of a chain.</summary>
    public void Load(RodChain chain)
    {
        count = chain.NodeCount;
        if (rest.Length < count)
        {
            int room = count + 32;
            (rest, axial, bend, turn, natural) = (new double[room], new double[room], new double[room], new double[room], new NaturalCurvature[room]);
        }

        LeastBendNMm = double.PositiveInfinity;
        MeanLengthMm = 0;
        curved = !chain.Natural.IsEmpty;
        for (int j = 0; j < count - 1; j++)
        {
            RodEdge edge = chain.Edges[j];
            rest[j] = edge.RestLengthMm;
            axial[j] = edge.AxialStiffnessN / edge.RestLengthMm;
            MeanLengthMm += edge.RestLengthMm / (count - 1);
            if (j == 0)
            {
                continue;
            }

            RodEdge before = chain.Edges[j - 1];
            double softness = Half(before.RestLengthMm, before.BendingStiffnessNMm2) + Half(edge.RestLengthMm, edge.BendingStiffnessNMm2);
            double give = Half(before.RestLengthMm, before.TorsionalStiffnessNMm2) + Half(edge.RestLengthMm, edge.TorsionalStiffnessNMm2);
            bend[j] = softness > 0 ? 1 / softness : 0;
            turn[j] = give > 0 ? 1 / give : 0;
            LeastBendNMm = bend[j] > 0 ? Math.Min(LeastBendNMm, bend[j]) : LeastBendNMm;
            natural[j] = curved ? NaturalBending.Discrete(chain.Natural[j], SoftLength(before) + SoftLength(edge)) : default;
        }
    }

    /// <summary>Energy of a pose.</summary>
    public ElasticEnergy Energy(RodPose pose)
    {
        double stretch = 0;
        double bending = 0;
        double twisting = 0;
        for (int j = 0; j < count - 1; j++)
        {
            double longer = pose.Lengths[j] - rest[j];
            stretch += 0.5 * axial[j] * longer * longer;
        }

        for (int i = 1; i < count - 1; i++)
        {
            double cosine = Math.Max(pose.Tangents[i - 1].Dot(pose.Tangents[i]), -1 + 1e-12);
            bending += 2 * bend[i] * (1 - cosine) / (1 + cosine);
            double twist = Twist(pose, i);
            twisting += 0.5 * turn[i] * twist * twist;
            if (curved)
            {
                bending += NaturalBending.Energy(pose, i, bend[i], natural[i]);
            }
        }

        return new ElasticEnergy(stretch, bending, twisting);
    }

    /// <summary>Adds first and second derivatives by all coordinates and angles.</summary>
    public void AddDerivatives(RodPose pose, double[] gradient, BandMatrix hessian)
    {
        for (int j = 0; j < count - 1; j++)
        {
            AddStretch(pose, j, gradient, hessian);
        }

        for (int i = 1; i < count - 1; i++)
        {
            node.Clear();
            AddBending(pose, i);
            AddTwist(pose, i);
            if (curved)
            {
                NaturalBending.Add(node, pose, i, bend[i], natural[i]);
            }

            node.Spread(4 * (i - 1), gradient, hessian);
        }
    }

    private static double Half(double length, double stiffness) => 0.5 * length / stiffness;

    private static double SoftLength(RodEdge edge) => double.IsInfinity(edge.BendingStiffnessNMm2) ? 0 : 0.5 * edge.RestLengthMm;

    private static double Twist(RodPose pose, int i) => pose.Angles[i] - pose.Angles[i - 1] + pose.Twists[i];

    private void AddStretch(RodPose pose, int j, double[] gradient, BandMatrix hessian)
    {
        Vector3D t = pose.Tangents[j];
        double force = axial[j] * (pose.Lengths[j] - rest[j]);
        double across = force / pose.Lengths[j];
        double along = axial[j] - across;
        Vector256<double> lanes = Vector256.Create(t.X, t.Y, t.Z, 0);
        int a = 4 * j;
        for (int r = 0; r < 3; r++)
        {
            double part = lanes[r];
            gradient[a + r] -= force * part;
            gradient[a + 4 + r] += force * part;
            Vector256<double> row = (along * part * lanes).WithElement(r, (along * part * part) + across);
            hessian.Add(a + r, a, row);
            hessian.Add(a + 4 + r, a, -row);
            hessian.Add(a + 4 + r, a + 4, row);
        }
    }

    private void AddBending(RodPose pose, int i)
    {
        Vector3D te = pose.Tangents[i - 1];
        Vector3D tf = pose.Tangents[i];
        double le = pose.Lengths[i - 1];
        double lf = pose.Lengths[i];
        double c = Math.Max(te.Dot(tf), -1 + 1e-12);
        double slope = -4 * bend[i] / ((1 + c) * (1 + c));
        double bow = -2 * slope / (1 + c);
        Vector3D a = (tf - (c * te)) / le;
        Vector3D b = (te - (c * tf)) / lf;
        node.Add(Before, slope, a);
        node.Add(After, slope, b);
        node.AddOuter(Before, Before, bow, a, a);
        node.AddOuter(Before, After, bow, a, b);
        node.AddOuter(After, After, bow, b, b);
        node.AddTwice(Before, -slope / le, te, a);
        node.AddUnit(Before, Before, -slope * c / (le * le));
        node.AddOuter(Before, Before, slope * c / (le * le), te, te);
        node.AddTwice(After, -slope / lf, tf, b);
        node.AddUnit(After, After, -slope * c / (lf * lf));
        node.AddOuter(After, After, slope * c / (lf * lf), tf, tf);
        node.AddUnit(Before, After, slope / (le * lf));
        node.AddOuter(Before, After, -slope / (le * lf), tf, tf);
        node.AddOuter(Before, After, -slope / le, te, b);
    }

    private void AddTwist(RodPose pose, int i)
    {
        double stiffness = turn[i];
        double torque = stiffness * Twist(pose, i);
        Vector3D te = pose.Tangents[i - 1];
        Vector3D tf = pose.Tangents[i];
        double le = pose.Lengths[i - 1];
        double lf = pose.Lengths[i];
        Vector3D kb = NaturalBending.Binormal(pose, i, out double chi);
        Vector3D mean = (te + tf) / chi;
        Vector3D a = kb / (2 * le);
        Vector3D b = kb / (2 * lf);
        node.Add(Before, torque, a);
        node.Add(After, torque, b);
        node.Add(AngleBefore, -torque);
        node.Add(AngleAfter, torque);
        node.AddOuter(Before, Before, stiffness, a, a);
        node.AddOuter(Before, After, stiffness, a, b);
        node.AddOuter(After, After, stiffness, b, b);
        node.AddMixed(AngleBefore, Before, -stiffness, a);
        node.AddMixed(AngleBefore, After, -stiffness, b);
        node.AddMixed(AngleAfter, Before, stiffness, a);
        node.AddMixed(AngleAfter, After, stiffness, b);
        node.AddAngles(AngleBefore, AngleBefore, stiffness);
        node.AddAngles(AngleAfter, AngleAfter, stiffness);
        node.AddAngles(AngleAfter, AngleBefore, -stiffness);
        node.AddTwice(Before, -torque / (4 * le * le), kb, te + mean);
        node.AddTwice(After, -torque / (4 * lf * lf), kb, tf + mean);
        node.AddCross(Before, After, torque / (chi * le * lf), te);
        node.AddOuter(Before, After, -torque / (2 * le * lf), kb, mean);
    }
}
