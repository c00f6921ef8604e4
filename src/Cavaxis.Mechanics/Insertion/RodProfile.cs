using System.Collections.Immutable;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Insertion;

/// <summary>A wire, introducer or cannula by numbers alone: its sections from the tip backwards.</summary>
public sealed record RodProfile
{
    /// <summary>Makes a profile.</summary>
    /// <param name="sections">Sections from the tip backwards.</param>
    /// <param name="friction">Coulomb's coefficient against the wall, 0 to 2; not known for veins, to be swept.</param>
    /// <param name="axialStiffnessN">EA, N. Near inextensible: the usual 5000 N lets 1 N shorten 500 mm by 0.1 mm.</param>
    /// <exception cref="InputFaultException">A number out of range.</exception>
    public RodProfile(ImmutableArray<RodSection> sections, double friction, double axialStiffnessN = 5000)
    {
        Require.InRange(sections.Length, 1, 1000, "profile.sections", "Give at least one section.");
        foreach (RodSection section in sections)
        {
            Require.InRange(section.LengthMm, 1e-3, 1e5, "profile.section.lengthMm", "Give the length of the section in mm.");
            Require.InRange(section.BendingStiffnessNMm2, 1e-3, 1e7, "profile.section.bendingStiffnessNMm2", "Give EI in N mm².");
            Require.InRange(section.TorsionalStiffnessNMm2, 1e-3, 1e7, "profile.section.torsionalStiffnessNMm2", "Give GJ in N mm².");
            Require.InRange(section.TipSideRadiusMm, 0, 50, "profile.section.tipSideRadiusMm", "Give the outer radius in mm.");
            Require.InRange(section.FarSideRadiusMm, 0, 50, "profile.section.farSideRadiusMm", "Give the outer radius in mm.");
            Require.InRange(section.NaturalCurvaturePerMm, -1, 1, "profile.section.naturalCurvaturePerMm", "Give the curvature in 1/mm.");
        }

        Friction = Require.InRange(friction, 0, 2, "profile.friction", "Give Coulomb's coefficient.");
        AxialStiffnessN = Require.InRange(axialStiffnessN, 1, 1e9, "profile.axialStiffnessN", "Give EA in N.");
        Sections = sections;
        LengthMm = sections.Sum(static s => s.LengthMm);
    }

    /// <summary>Sections from the tip backwards.</summary>
    public ImmutableArray<RodSection> Sections { get; }

    /// <summary>Coulomb's coefficient against the wall.</summary>
    public double Friction { get; }

    /// <summary>EA, N.</summary>
    public double AxialStiffnessN { get; }

    /// <summary>Length of all sections, mm.</summary>
    public double LengthMm { get; }

    /// <summary>Section at a distance from the tip; the last one goes on.</summary>
    /// <param name="fromTipMm">Distance from the tip, mm.</param>
    /// <returns>The section and how far into it the place lies, 0 to 1.</returns>
    public (RodSection Section, double Share) At(double fromTipMm)
    {
        double start = 0;
        foreach (RodSection section in Sections)
        {
            if (fromTipMm < start + section.LengthMm)
            {
                return (section, Math.Clamp((fromTipMm - start) / section.LengthMm, 0, 1));
            }

            start += section.LengthMm;
        }

        return (Sections[^1], 1);
    }

    /// <summary>Outer radius at a distance from the tip.</summary>
    /// <param name="fromTipMm">Distance from the tip, mm.</param>
    /// <returns>mm.</returns>
    public double RadiusMm(double fromTipMm)
    {
        (RodSection section, double share) = At(fromTipMm);
        return section.TipSideRadiusMm + (share * (section.FarSideRadiusMm - section.TipSideRadiusMm));
    }
}
