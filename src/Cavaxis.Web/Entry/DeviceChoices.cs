using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Configurations;

namespace Cavaxis.Web.Entry;

/// <summary>The devices of the catalogue as answers of the entry.</summary>
internal static class DeviceChoices
{
    private static DeviceCatalogue Catalogue => DeviceCatalogue.BuiltIn;

    /// <summary>Cannulae that can do what is asked of one.</summary>
    /// <param name="role">What it does.</param>
    public static IReadOnlyList<EntryChoice> For(CannulaRole role) =>
        [.. Catalogue.Cannulae.Where(c => Does(c.Family, role)).Select(static c => new EntryChoice(c.Id, c.Description))];

    /// <summary>Every cannula of the catalogue.</summary>
    public static IReadOnlyList<EntryChoice> Cannulae => [.. Catalogue.Cannulae.Select(static c => new EntryChoice(c.Id, c.Description))];

    /// <summary>Pumps.</summary>
    public static IReadOnlyList<EntryChoice> Pumps => [.. Catalogue.Pumps.Select(static p => new EntryChoice(p.Id, p.Description))];

    /// <summary>Membrane lungs.</summary>
    public static IReadOnlyList<EntryChoice> MembraneLungs => [.. Catalogue.MembraneLungs.Select(static l => new EntryChoice(l.Id, l.Description))];

    private static bool Does(CannulaFamily family, CannulaRole role) => role switch
    {
        CannulaRole.Drainage => family is CannulaFamily.SingleStageDrainage or CannulaFamily.MultiStageDrainage,
        CannulaRole.VenousReturn => family == CannulaFamily.VenousReturn,
        CannulaRole.ArterialReturn => family == CannulaFamily.ArterialReturn,
        CannulaRole.DualLumen => family is CannulaFamily.BicavalDualLumen or CannulaFamily.AtrialDualLumen,
        CannulaRole.DistalPerfusion => family == CannulaFamily.DistalPerfusion,
        _ => false,
    };
}
