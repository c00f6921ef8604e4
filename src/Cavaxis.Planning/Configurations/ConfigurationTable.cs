using Cavaxis.Devices.Cannulae;

namespace Cavaxis.Planning.Configurations;

/// <summary>What each configuration consists of.</summary>
/// <param name="Configuration">Which.</param>
/// <param name="Kind">Where the blood returns.</param>
/// <param name="Name">In words.</param>
/// <param name="ShortName">In few words, for narrow tables.</param>
/// <param name="Slots">The cannulae it needs.</param>
/// <param name="NeedsSurgery">True when a vessel is opened and a graft sewn.</param>
public sealed record ConfigurationTable(
    ConfigurationKind Configuration, SupportKind Kind, string Name, string ShortName, IReadOnlyList<RoleSlot> Slots, bool NeedsSurgery)
{
    private static readonly RoleSlot FemoralDrainage = new(
        CannulaRole.Drainage, AccessRoute.FemoralVein, [CannulaFamily.MultiStageDrainage, CannulaFamily.SingleStageDrainage]);

    private static readonly RoleSlot JugularReturn = new(
        CannulaRole.VenousReturn, AccessRoute.Jugular, [CannulaFamily.VenousReturn]);

    private static readonly RoleSlot FemoralReturn = new(
        CannulaRole.VenousReturn, AccessRoute.FemoralVein, [CannulaFamily.VenousReturn]);

    private static readonly RoleSlot DualLumen = new(
        CannulaRole.DualLumen, AccessRoute.Jugular, [CannulaFamily.BicavalDualLumen]);

    private static readonly RoleSlot FemoralArtery = new(
        CannulaRole.ArterialReturn, AccessRoute.FemoralArtery, [CannulaFamily.ArterialReturn]);

    private static readonly RoleSlot AxillaryGraft = new(
        CannulaRole.ArterialReturn, AccessRoute.AxillaryGraft, [CannulaFamily.ArterialReturn]);

    private static readonly RoleSlot DistalPerfusion = new(
        CannulaRole.DistalPerfusion, AccessRoute.SuperficialFemoralArtery, [CannulaFamily.DistalPerfusion]);

    /// <summary>Every configuration, in the order of <see cref="ConfigurationKind"/>.</summary>
    public static IReadOnlyList<ConfigurationTable> All { get; } =
    [
        new(ConfigurationKind.VvFemoralJugular, SupportKind.VenoVenous, "V-V femoral drainage, jugular return", "V-V fem-jug", [FemoralDrainage, JugularReturn], false),
        new(ConfigurationKind.VvFemoralFemoral, SupportKind.VenoVenous, "V-V femoral drainage, femoral return", "V-V fem-fem", [FemoralDrainage, FemoralReturn], false),
        new(ConfigurationKind.VvDualLumenJugular, SupportKind.VenoVenous, "V-V single-site dual-lumen jugular", "V-V dual-lumen", [DualLumen], false),
        new(ConfigurationKind.VaFemoral, SupportKind.VenoArterial, "V-A femoral, no distal perfusion", "V-A fem", [FemoralDrainage, FemoralArtery], false),
        new(ConfigurationKind.VaFemoralWithDistalPerfusion, SupportKind.VenoArterial, "V-A femoral with distal perfusion", "V-A fem + distal", [FemoralDrainage, FemoralArtery, DistalPerfusion], false),
        new(ConfigurationKind.VaAxillaryGraft, SupportKind.VenoArterial, "V-A femoral drainage, axillary graft return", "V-A axillary", [FemoralDrainage, AxillaryGraft], true),
        new(ConfigurationKind.VavFemoralJugular, SupportKind.VenoArterioVenous, "V-AV femoral, jugular venous return, distal perfusion", "V-AV + distal", [FemoralDrainage, FemoralArtery, JugularReturn, DistalPerfusion], false),
    ];

    /// <summary>The entry of one configuration.</summary>
    /// <param name="configuration">Which.</param>
    /// <returns>Its entry.</returns>
    public static ConfigurationTable Of(ConfigurationKind configuration) => All[(int)configuration];
}
