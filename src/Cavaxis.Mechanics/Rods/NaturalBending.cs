using Cavaxis.Anatomy.Space;
using static Cavaxis.Mechanics.Rods.NodeDerivatives;

namespace Cavaxis.Mechanics.Rods;

/// <summary>
/// What natural curvature adds to the bending of a node: κ₁ = ½ κb·(m₂ + m₂'), κ₂ = −½ κb·(m₁ + m₁') with the material
/// directors of the two edges (Bergou et al. 2010).
/// </summary>
internal static class NaturalBending
{
    /// <summary>Curvature times length as the discrete binormal measures it: 2 tan(φ/2).</summary>
    public static NaturalCurvature Discrete(NaturalCurvature curvature, double length)
    {
        double angle = length * Math.Sqrt((curvature.FirstPerMm * curvature.FirstPerMm) + (curvature.SecondPerMm * curvature.SecondPerMm));
        double scale = angle > 1e-12 ? length * 2 * Math.Tan(0.5 * angle) / angle : length;
        return new NaturalCurvature(curvature.FirstPerMm * scale, curvature.SecondPerMm * scale);
    }

    /// <summary>Curvature binormal κb of a node, and 1 + t₁·t₂.</summary>
    public static Vector3D Binormal(RodPose pose, int i, out double chi)
    {
        chi = Math.Max(1 + pose.Tangents[i - 1].Dot(pose.Tangents[i]), 1e-12);
        return 2 / chi * pose.Tangents[i - 1].Cross(pose.Tangents[i]);
    }

    /// <summary>The part ½ B κ̄² − B κ̄·κ of the energy.</summary>
    public static double Energy(RodPose pose, int i, double stiffness, NaturalCurvature k)
    {
        if (k == default)
        {
            return 0;
        }

        Vector3D kb = Binormal(pose, i, out _);
        (Vector3D e1, Vector3D e2) = Material(pose, i - 1);
        (Vector3D f1, Vector3D f2) = Material(pose, i);
        double first = 0.5 * kb.Dot(e2 + f2);
        double second = -0.5 * kb.Dot(e1 + f1);
        return stiffness * ((0.5 * ((k.FirstPerMm * k.FirstPerMm) + (k.SecondPerMm * k.SecondPerMm))) - (k.FirstPerMm * first) - (k.SecondPerMm * second));
    }

    /// <summary>The part −B κ̄·κ of the energy: κ₁ by the second directors, κ₂ by the first with the sign turned.</summary>
    public static void Add(NodeDerivatives node, RodPose pose, int i, double stiffness, NaturalCurvature k)
    {
        if (k == default)
        {
            return;
        }

        (Vector3D e1, Vector3D e2) = Material(pose, i - 1);
        (Vector3D f1, Vector3D f2) = Material(pose, i);
        AddProjection(node, pose, i, -stiffness * k.FirstPerMm, e2, f2, -1 * e1, -1 * f1);
        AddProjection(node, pose, i, stiffness * k.SecondPerMm, e1, f1, e2, f2);
    }

    private static (Vector3D First, Vector3D Second) Material(RodPose pose, int j)
    {
        (double sin, double cos) = Math.SinCos(pose.Angles[j]);
        Vector3D d1 = pose.Directors[j];
        Vector3D d2 = pose.Tangents[j].Cross(d1);
        return ((cos * d1) + (sin * d2), (cos * d2) - (sin * d1));
    }

    /// <summary>
    /// Derivatives of factor · ½ κb·(me + mf), with the directors' derivatives by the angles given (Bergou et al. 2010, appendix).
    /// </summary>
    private static void AddProjection(NodeDerivatives node, RodPose pose, int i, double factor, Vector3D me, Vector3D mf, Vector3D turnedE, Vector3D turnedF)
    {
        Vector3D te = pose.Tangents[i - 1];
        Vector3D tf = pose.Tangents[i];
        double le = pose.Lengths[i - 1];
        double lf = pose.Lengths[i];
        Vector3D kb = Binormal(pose, i, out double chi);
        Vector3D mean = (te + tf) / chi;
        Vector3D director = (me + mf) / chi;
        double kappa = 0.5 * kb.Dot(me + mf);
        Vector3D fd = tf.Cross(director);
        Vector3D ed = te.Cross(director);
        node.Add(Before, factor / le, fd - (kappa * mean));
        node.Add(After, -factor / lf, ed + (kappa * mean));
        node.Add(AngleBefore, 0.5 * factor * kb.Dot(turnedE));
        node.Add(AngleAfter, 0.5 * factor * kb.Dot(turnedF));

        double ee = factor / (le * le);
        double ff = factor / (lf * lf);
        double ef = factor / (le * lf);
        node.AddOuter(Before, Before, 2 * kappa * ee, mean, mean);
        node.AddTwice(Before, -ee, fd, mean);
        node.AddUnit(Before, Before, -kappa / chi * ee);
        node.AddOuter(Before, Before, kappa / chi * ee, te, te);
        node.AddTwice(Before, 0.25 * ee, kb, me);
        node.AddOuter(After, After, 2 * kappa * ff, mean, mean);
        node.AddTwice(After, ff, ed, mean);
        node.AddUnit(After, After, -kappa / chi * ff);
        node.AddOuter(After, After, kappa / chi * ff, tf, tf);
        node.AddTwice(After, 0.25 * ff, kb, mf);
        node.AddUnit(Before, After, -kappa / chi * ef);
        node.AddOuter(Before, After, -kappa / chi * ef, te, tf);
        node.AddOuter(Before, After, 2 * kappa * ef, mean, mean);
        node.AddOuter(Before, After, -ef, fd, mean);
        node.AddOuter(Before, After, ef, mean, ed);
        node.AddCross(Before, After, -ef, director);

        node.AddAngles(AngleBefore, AngleBefore, -0.5 * factor * kb.Dot(me));
        node.AddAngles(AngleAfter, AngleAfter, -0.5 * factor * kb.Dot(mf));
        AddTurned(node, AngleBefore, factor, kb, mean, te, tf, turnedE, chi, le, lf);
        AddTurned(node, AngleAfter, factor, kb, mean, te, tf, turnedF, chi, le, lf);
    }

    private static void AddTurned(
        NodeDerivatives node, int angle, double factor, Vector3D kb, Vector3D mean, Vector3D te, Vector3D tf, Vector3D turned, double chi, double le, double lf)
    {
        double half = 0.5 * kb.Dot(turned);
        node.AddMixed(angle, Before, factor / le, (tf.Cross(turned) / chi) - (half * mean));
        node.AddMixed(angle, After, -factor / lf, (te.Cross(turned) / chi) + (half * mean));
    }
}
