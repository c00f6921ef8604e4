using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.MembraneLungs;
using Cavaxis.Devices.Pumps;
using Cavaxis.Devices.Wires;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Devices.Catalogue;

/// <summary>The devices a plan may choose from. Immutable; identifiers are unique over all kinds of device.</summary>
public sealed class DeviceCatalogue
{
    private static readonly Lazy<DeviceCatalogue> Embedded = new(ReadEmbedded);
    private readonly Dictionary<string, Cannula> cannulaById;
    private readonly Dictionary<string, CentrifugalPump> pumpById;
    private readonly Dictionary<string, MembraneLung> lungById;
    private readonly Dictionary<string, GuideWire> wireById;

    /// <summary>A catalogue of given devices.</summary>
    /// <param name="version">Version of the data, such as "1.0.0".</param>
    /// <param name="cannulae">Cannulae.</param>
    /// <param name="pumps">Pumps.</param>
    /// <param name="membraneLungs">Membrane lungs.</param>
    /// <param name="wires">Guide wires.</param>
    /// <exception cref="InputFaultException">A device breaks a rule of its kind, or an identifier stands twice; carries all faults.</exception>
    public DeviceCatalogue(
        string version,
        IReadOnlyList<Cannula> cannulae,
        IReadOnlyList<CentrifugalPump> pumps,
        IReadOnlyList<MembraneLung> membraneLungs,
        IReadOnlyList<GuideWire> wires)
    {
        Version = version;
        Cannulae = [.. cannulae];
        Pumps = [.. pumps];
        MembraneLungs = [.. membraneLungs];
        Wires = [.. wires];
        List<InputFault> faults = CatalogueRules.FaultsOf(this);
        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        cannulaById = Cannulae.ToDictionary(c => c.Id, StringComparer.Ordinal);
        pumpById = Pumps.ToDictionary(p => p.Id, StringComparer.Ordinal);
        lungById = MembraneLungs.ToDictionary(l => l.Id, StringComparer.Ordinal);
        wireById = Wires.ToDictionary(w => w.Id, StringComparer.Ordinal);
    }

    /// <summary>The catalogue of generic families that comes with the program.</summary>
    public static DeviceCatalogue BuiltIn => Embedded.Value;

    /// <summary>Version of the data.</summary>
    public string Version { get; }

    /// <summary>Cannulae in the order of the file.</summary>
    public IReadOnlyList<Cannula> Cannulae { get; }

    /// <summary>Pumps in the order of the file.</summary>
    public IReadOnlyList<CentrifugalPump> Pumps { get; }

    /// <summary>Membrane lungs in the order of the file.</summary>
    public IReadOnlyList<MembraneLung> MembraneLungs { get; }

    /// <summary>Guide wires in the order of the file.</summary>
    public IReadOnlyList<GuideWire> Wires { get; }

    /// <summary>The cannula with an identifier.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The cannula, or null when there is none.</returns>
    public Cannula? FindCannula(string id) => cannulaById.GetValueOrDefault(id);

    /// <summary>The pump with an identifier.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The pump, or null when there is none.</returns>
    public CentrifugalPump? FindPump(string id) => pumpById.GetValueOrDefault(id);

    /// <summary>The membrane lung with an identifier.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The lung, or null when there is none.</returns>
    public MembraneLung? FindMembraneLung(string id) => lungById.GetValueOrDefault(id);

    /// <summary>The wire with an identifier.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The wire, or null when there is none.</returns>
    public GuideWire? FindWire(string id) => wireById.GetValueOrDefault(id);

    /// <summary>The cannula with an identifier that has to exist.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The cannula.</returns>
    /// <exception cref="InputFaultException">There is none.</exception>
    public Cannula Cannula(string id) => FindCannula(id) ?? throw new InputFaultException(new InputFault(
        FaultCode.NotFound, "cannula id", InputFault.Shown(id), "the identifier of a cannula in the catalogue", "List the catalogue and choose one."));

    /// <summary>This catalogue with another's devices added; a device with a known identifier replaces the one it names.</summary>
    /// <param name="other">The catalogue to add, such as a programme's own.</param>
    /// <returns>The joined catalogue, with the version of both.</returns>
    /// <exception cref="InputFaultException">An identifier would name two different kinds of device.</exception>
    public DeviceCatalogue With(DeviceCatalogue other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new DeviceCatalogue(
            Version == other.Version ? Version : $"{Version}+{other.Version}",
            Joined(Cannulae, other.Cannulae, c => c.Id),
            Joined(Pumps, other.Pumps, p => p.Id),
            Joined(MembraneLungs, other.MembraneLungs, l => l.Id),
            Joined(Wires, other.Wires, w => w.Id));
    }

    private static List<T> Joined<T>(IReadOnlyList<T> first, IReadOnlyList<T> second, Func<T, string> id)
    {
        Dictionary<string, T> newer = second.ToDictionary(id, StringComparer.Ordinal);
        List<T> all = [.. first.Select(d => newer.Remove(id(d), out T? replacement) ? replacement : d)];
        all.AddRange(second.Where(d => newer.ContainsKey(id(d))));
        return all;
    }

    private static DeviceCatalogue ReadEmbedded()
    {
        const string Name = "Cavaxis.Devices.devices.json";
        using Stream stream = typeof(DeviceCatalogue).Assembly.GetManifestResourceStream(Name)
            ?? throw new InvalidOperationException($"The resource {Name} is missing from the assembly.");
        using StreamReader reader = new(stream);
        return CatalogueFile.Parse(reader.ReadToEnd());
    }
}
