using System.Collections.Immutable;
using Cavaxis.Mechanics.Rods;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>The common centreline without load: where devices overlap, stiffness adds up and the outermost gives the radius.</summary>
internal static class AssemblyChain
{
    /// <summary>Places in each piece at which its stiffness is looked up.</summary>
    private const int Samples = 4;

    private static readonly Device[] Devices = Enum.GetValues<Device>();

    /// <summary>Length from the skin to each node; the last piece is between half and one and a half of the spacing.</summary>
    public static ImmutableArray<double> Arcs(double lengthMm, double spacingMm)
    {
        int pieces = Math.Max(1, (int)Math.Round(lengthMm / spacingMm));
        double[] arcs = new double[pieces + 2];
        for (int k = 0; k <= pieces; k++)
        {
            arcs[k + 1] = k == pieces ? lengthMm : k * spacingMm;
        }

        arcs[0] = -spacingMm;
        return [.. arcs];
    }

    /// <summary>The chain, with a rigid piece before the skin.</summary>
    public static RodChain Of(InsertionKit kit, InsertedDepths depths, ImmutableArray<double> arcs)
    {
        RodEdge[] edges = new RodEdge[arcs.Length - 1];
        for (int j = 0; j < edges.Length; j++)
        {
            edges[j] = Edge(kit, depths, arcs[j], arcs[j + 1], j == 0);
        }

        double[] radii = new double[arcs.Length];
        NaturalCurvature[] natural = new NaturalCurvature[arcs.Length];
        bool curved = false;
        for (int i = 0; i < arcs.Length; i++)
        {
            radii[i] = Radius(kit, depths, arcs[i]);
            natural[i] = new NaturalCurvature(Natural(kit, depths, arcs[i]), 0);
            curved |= natural[i] != default;
        }

        return new RodChain([.. edges], [.. radii], curved ? [.. natural] : []);
    }

    /// <summary>Friction of the outermost device at each node.</summary>
    public static ImmutableArray<double> Frictions(InsertionKit kit, InsertedDepths depths, ImmutableArray<double> arcs) =>
        [.. arcs.Select(arc => kit.Of(depths.OutermostAt(arc))!.Friction)];

    private static RodEdge Edge(InsertionKit kit, InsertedDepths depths, double from, double to, bool clamped)
    {
        double bendSoft = 0;
        double twistSoft = 0;
        double axialSoft = 0;
        for (int k = 0; k < Samples; k++)
        {
            double depth = from + ((k + 0.5) / Samples * (to - from));
            (double axial, double bend, double twist) = (0, 0, 0);
            foreach ((RodProfile profile, double fromTip) in At(kit, depths, depth))
            {
                RodSection section = profile.At(fromTip).Section;
                axial += profile.AxialStiffnessN;
                bend += section.BendingStiffnessNMm2;
                twist += section.TorsionalStiffnessNMm2;
            }

            axialSoft += 1 / axial;
            bendSoft += 1 / bend;
            twistSoft += 1 / twist;
        }

        return new RodEdge(
            to - from, Samples / axialSoft, clamped ? double.PositiveInfinity : Samples / bendSoft, clamped ? double.PositiveInfinity : Samples / twistSoft);
    }

    private static double Radius(InsertionKit kit, InsertedDepths depths, double depth)
    {
        double radius = 0;
        foreach ((RodProfile profile, double fromTip) in At(kit, depths, depth))
        {
            radius = Math.Max(radius, profile.RadiusMm(fromTip));
        }

        return radius;
    }

    private static double Natural(InsertionKit kit, InsertedDepths depths, double depth)
    {
        double moment = 0;
        double stiffness = 0;
        foreach ((RodProfile profile, double fromTip) in At(kit, depths, depth))
        {
            RodSection section = profile.At(fromTip).Section;
            moment += section.BendingStiffnessNMm2 * section.NaturalCurvaturePerMm;
            stiffness += section.BendingStiffnessNMm2;
        }

        return moment / stiffness;
    }

    private static IEnumerable<(RodProfile Profile, double FromTipMm)> At(InsertionKit kit, InsertedDepths depths, double depth)
    {
        foreach (Device device in Devices)
        {
            double tip = depths.Of(device);
            if (tip > 0 && depth <= tip + 1e-9 && kit.Of(device) is RodProfile profile)
            {
                yield return (profile, Math.Max(0, tip - depth));
            }
        }
    }
}
