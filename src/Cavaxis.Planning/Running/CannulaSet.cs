using System.Globalization;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Running;

/// <summary>The cannulae of the running circuit and what they cost in pressure.</summary>
internal sealed class CannulaSet
{
    private const double AcceptableDrainageMmHg = 80;
    private const double AcceptableReturnMmHg = 120;
    private const double HighestDropPa = 200_000;
    private readonly List<RunningDevice> drainage = [];
    private readonly List<RunningDevice> venous = [];
    private readonly List<RunningDevice> arterial = [];
    private readonly Fluid blood;
    private readonly double arterialShare;

    private CannulaSet(Fluid blood, double arterialShare) => (this.blood, this.arterialShare) = (blood, arterialShare);

    /// <summary>Identifiers with roles in words.</summary>
    public IReadOnlyList<string> Names { get; private set; } = [];

    /// <summary>Blood in the drainage cannulae.</summary>
    public double DrainageMl => drainage.Sum(d => VolumeMl(d.Cannula, LumenPurpose.Drainage));

    /// <summary>Blood in the return cannulae.</summary>
    public double ReturnMl => venous.Concat(arterial).Sum(d => VolumeMl(d.Cannula, LumenPurpose.Return));

    /// <summary>Reads them; where a role is empty a usual one is taken from the catalogue and listed.</summary>
    public static CannulaSet Of(
        RunningSection running, RunningConfiguration configuration, double flow, double arterialShare, DeviceCatalogue catalogue, Fluid blood, ParameterBook book)
    {
        CannulaSet set = new(blood, arterialShare);
        List<string> names = [];
        List<InputFault> faults = [];
        for (int i = 0; i < running.Cannulae.Count; i++)
        {
            RunningCannula lying = running.Cannulae[i];
            string field = string.Create(CultureInfo.InvariantCulture, $"running.cannulae[{i}]");
            if (catalogue.FindCannula(lying.Device) is not Cannula cannula)
            {
                faults.Add(new InputFault(
                    FaultCode.NotFound, $"{field}.device", InputFault.Shown(lying.Device), "the identifier of a cannula in the catalogue", "List the catalogue and choose one."));
                continue;
            }

            if (lying.Role == CannulaRole.DistalPerfusion)
            {
                book.Leave($"The distal perfusion cannula {cannula.Id} is not part of the circulation.");
                continue;
            }

            names.Add($"{PlainRole(lying.Role)}: {cannula.Id}");
            set.Add(lying.Role, new RunningDevice(cannula, PlainRole(lying.Role), lying, field), faults);
        }

        if (faults.Count > 0)
        {
            throw new InputFaultException(faults);
        }

        foreach (CannulaRole role in set.Missing(configuration))
        {
            Cannula usual = Usual(role, flow, arterialShare, catalogue, blood);
            set.Add(role, new RunningDevice(usual, PlainRole(role), null, "running.cannulae"), faults);
            names.Add($"{PlainRole(role)}: {usual.Id} (assumed)");
            book.Assume("running.cannulae", $"{usual.Id} for {PlainRole(role)}: the smallest of the catalogue with a usual drop at this flow", "pressures of the circuit");
        }

        set.Names = names;
        return set;
    }

    /// <summary>Drop of the drainage cannulae together: they share the flow so that each costs the same.</summary>
    public double DrainageMmHg(double flowLPerMin) => Together(drainage, LumenPurpose.Drainage, flowLPerMin);

    /// <summary>Drop of the return: the branch that costs more sets the pressure, and a clamp takes up the rest on the other.</summary>
    public double ReturnMmHg(double flowLPerMin) => Math.Max(
        arterial.Count > 0 && arterialShare > 0 ? Together(arterial, LumenPurpose.Return, flowLPerMin * arterialShare) : 0,
        venous.Count > 0 && arterialShare < 1 ? Together(venous, LumenPurpose.Return, flowLPerMin * (1 - arterialShare)) : 0);

    /// <summary>The drainage cannulae with the flow through each.</summary>
    public IReadOnlyList<(RunningDevice Device, double FlowLPerMin)> Draining(double flowLPerMin) => Shared(drainage, LumenPurpose.Drainage, flowLPerMin);

    /// <summary>The cannulae that return to a vein, with the flow through each; empty where none does.</summary>
    public IReadOnlyList<(RunningDevice Device, double FlowLPerMin)> Returning(double flowLPerMin) =>
        venous.Count == 0 || arterialShare >= 1 ? [] : Shared(venous, LumenPurpose.Return, flowLPerMin * (1 - arterialShare));

    /// <summary>ρ L/A along one drainage and one return cannula.</summary>
    public double InertanceMmHgS2PerMl(double densityKgPerM3)
    {
        double paths = Path(drainage, LumenPurpose.Drainage) + Path(arterial.Count > 0 ? arterial : venous, LumenPurpose.Return);
        return densityKgPerM3 * paths * 1e3 / UnitFactors.PascalsPerMmHg * 1e-6;
    }

    // Length over area of the narrowest description, 1/mm; cannulae side by side share it.
    private static double Path(List<RunningDevice> list, LumenPurpose purpose) => list.Count == 0
        ? 0
        : list[0].Cannula.LumenFor(purpose)!.Segments.Sum(s => s.LengthMm / s.AreaMm2) / list.Count;

    private static double VolumeMl(Cannula cannula, LumenPurpose purpose) =>
        cannula.LumenFor(purpose)!.Segments.Sum(static s => s.LengthMm * s.AreaMm2) / 1000;

    private double Together(List<RunningDevice> list, LumenPurpose purpose, double flow)
    {
        if (list.Count == 1)
        {
            return CannulaHydraulics.At(list[0].Cannula, purpose, flow, blood).PressureDropPa / UnitFactors.PascalsPerMmHg;
        }

        (double low, double high) = (0, HighestDropPa);
        for (int i = 0; i < 40; i++)
        {
            double middle = 0.5 * (low + high);
            double sum = list.Sum(c => CannulaHydraulics.FlowLPerMinFor(c.Cannula, purpose, middle, blood));
            (low, high) = sum < flow ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high) / UnitFactors.PascalsPerMmHg;
    }

    private IReadOnlyList<(RunningDevice Device, double FlowLPerMin)> Shared(List<RunningDevice> list, LumenPurpose purpose, double flow)
    {
        if (list.Count == 1)
        {
            return [(list[0], flow)];
        }

        double dropPa = Together(list, purpose, flow) * UnitFactors.PascalsPerMmHg;
        double[] flows = [.. list.Select(c => CannulaHydraulics.FlowLPerMinFor(c.Cannula, purpose, dropPa, blood))];
        double sum = flows.Sum();
        return [.. list.Select((device, i) => (device, flow * flows[i] / sum))];
    }

    /// <summary>What stands in for a role that the case does not name: the smallest of the catalogue with a usual drop at this flow.</summary>
    internal static Cannula Usual(CannulaRole role, double flow, double arterialShare, DeviceCatalogue catalogue, Fluid blood)
    {
        (CannulaFamily[] families, LumenPurpose purpose, double share, double acceptable) = role switch
        {
            CannulaRole.Drainage => (new[] { CannulaFamily.MultiStageDrainage, CannulaFamily.SingleStageDrainage }, LumenPurpose.Drainage, 1.0, AcceptableDrainageMmHg),
            CannulaRole.VenousReturn => ([CannulaFamily.VenousReturn], LumenPurpose.Return, 1 - arterialShare, AcceptableReturnMmHg),
            CannulaRole.ArterialReturn => ([CannulaFamily.ArterialReturn], LumenPurpose.Return, arterialShare, AcceptableReturnMmHg),
            _ => ([CannulaFamily.BicavalDualLumen], LumenPurpose.Drainage, 1.0, AcceptableDrainageMmHg),
        };
        (Cannula Cannula, double Drop)[] all = [.. catalogue.Cannulae
            .Where(c => families.Contains(c.Family))
            .Select(c => (c, CannulaHydraulics.At(c, purpose, flow * share, blood).PressureDropPa / UnitFactors.PascalsPerMmHg))];
        (Cannula Cannula, double Drop)[] good = [.. all.Where(c => c.Drop <= acceptable)];
        return good.Length > 0
            ? good.OrderBy(static c => c.Cannula.OuterDiameterFrench).ThenBy(static c => c.Cannula.Id, StringComparer.Ordinal).First().Cannula
            : all.OrderBy(static c => c.Drop).Select(static c => c.Cannula).FirstOrDefault()
                ?? throw new InputFaultException(new InputFault(
                    FaultCode.NotFound, "running.cannulae", PlainRole(role), "a cannula of this kind in the catalogue", "Add one to the catalogue or name the cannulae."));
    }

    private static string PlainRole(CannulaRole role) => JsonName.Of(role.ToString());

    private void Add(CannulaRole role, RunningDevice device, List<InputFault> faults)
    {
        Cannula cannula = device.Cannula;
        bool drains = role is CannulaRole.Drainage or CannulaRole.DualLumen;
        bool returns = role is not CannulaRole.Drainage;
        if ((drains && cannula.LumenFor(LumenPurpose.Drainage) is null) || (returns && cannula.LumenFor(LumenPurpose.Return) is null))
        {
            faults.Add(new InputFault(
                FaultCode.Contradiction, $"{device.Field}.device", InputFault.Shown(cannula.Id), $"a cannula that can serve as {PlainRole(role)}", "Check role and device."));
            return;
        }

        if (drains)
        {
            drainage.Add(device);
        }

        if (returns)
        {
            (role == CannulaRole.ArterialReturn ? arterial : venous).Add(device);
        }
    }

    private IEnumerable<CannulaRole> Missing(RunningConfiguration configuration)
    {
        bool dual = configuration == RunningConfiguration.VvDualLumen;
        if (dual && venous.Count == 0)
        {
            yield return CannulaRole.DualLumen;
        }

        if (!dual && drainage.Count == 0)
        {
            yield return CannulaRole.Drainage;
        }

        if (configuration is RunningConfiguration.VvTwoSite or RunningConfiguration.VavFemoral && venous.Count == 0)
        {
            yield return CannulaRole.VenousReturn;
        }

        if (configuration is RunningConfiguration.VaFemoral or RunningConfiguration.VaAxillary or RunningConfiguration.VavFemoral && arterial.Count == 0)
        {
            yield return CannulaRole.ArterialReturn;
        }
    }
}
