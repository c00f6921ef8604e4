using Cavaxis.Arteries.Tree;

namespace Cavaxis.Reports.ArterialReports;

/// <summary>At which artery the numbers of an organ stand in the drawing, and on which side of the page.</summary>
/// <param name="Organ">The organ.</param>
/// <param name="Segment">Identifier of the artery.</param>
/// <param name="OnLeft">Whether the label stands at the left of the page, where the patient's right is.</param>
public sealed record OrganAnchor(ArterialOrgan Organ, string Segment, bool OnLeft)
{
    /// <summary>Every organ with its artery.</summary>
    public static IReadOnlyList<OrganAnchor> All { get; } =
    [
        new(ArterialOrgan.Heart, "coronary_L", false),
        new(ArterialOrgan.BrainRight, "internal_carotid_R", true),
        new(ArterialOrgan.BrainLeft, "internal_carotid_L", false),
        new(ArterialOrgan.HandRight, "radial_R", true),
        new(ArterialOrgan.HandLeft, "radial_L", false),
        new(ArterialOrgan.Gut, "superior_mesenteric", true),
        new(ArterialOrgan.KidneyRight, "renal_R", true),
        new(ArterialOrgan.KidneyLeft, "renal_L", false),
        new(ArterialOrgan.LegRight, "femoral_R_II", true),
        new(ArterialOrgan.LegLeft, "femoral_L_II", false),
    ];
}
