using Cavaxis.Anatomy.Body;
using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Search;

/// <summary>Tries every device of the catalogue on every side for one configuration and keeps the best.</summary>
internal sealed class ConfigurationSearch
{
    /// <summary>Options kept for a slot that does not reach the axis: its choice does not touch the others.</summary>
    private const int KeptOffAxis = 4;
    private const int FlowHalvings = 24;

    /// <summary>A distal perfusion cannula is fed from the return line; the smallest that costs less than this is taken.</summary>
    private const double MostDistalDropMmHg = 100;

    /// <summary>A plan that carries less than this share of the flow needed is stopped.</summary>
    internal const double LeastShareOfNeed = 0.5;

    private readonly PlanningContext context;
    private readonly ConfigurationTable configuration;
    private readonly CriteriaScale scale;
    private readonly FlowNeed need;
    private readonly CircuitModel circuit;
    private readonly CriteriaValues criteria;
    private readonly Dictionary<(DepthWindows, DepthWindows?), int> joint = [];
    private readonly ulong[] marks;

    /// <summary>Prepares the search.</summary>
    /// <param name="context">The case.</param>
    /// <param name="configuration">The configuration.</param>
    /// <param name="scale">Points and weights.</param>
    public ConfigurationSearch(PlanningContext context, ConfigurationTable configuration, CriteriaScale scale)
    {
        (this.context, this.configuration, this.scale) = (context, configuration, scale);
        need = context.Flows.For(configuration.Configuration);
        circuit = new CircuitModel(
            need.FlowLPerMin.Value, context.Catalogue, context.Blood, context.Reading.Picture, context.Rules);
        criteria = new CriteriaValues(context, configuration, need.FlowLPerMin.Value);
        marks = new ulong[(context.Samples.Count + 63) / 64];
    }

    /// <summary>The need that the configuration is sized for.</summary>
    public FlowNeed Need => need;

    /// <summary>The circuit.</summary>
    public CircuitModel Circuit => circuit;

    /// <summary>Why a slot stayed empty, after a search without result.</summary>
    public string EmptyReason { get; private set; } = string.Empty;

    /// <summary>The best combinations, best first, no two with the same sizes.</summary>
    /// <param name="count">How many at most.</param>
    /// <returns>The combinations; empty when a slot cannot be filled.</returns>
    public IReadOnlyList<Combination> Best(int count)
    {
        List<List<SlotOption>> slots = [];
        foreach (RoleSlot slot in configuration.Slots)
        {
            List<SlotOption> options = OptionsFor(slot);
            if (options.Count == 0)
            {
                EmptyReason = $"no device for {PlainWords.Role(slot.Role)} through {PlainWords.Route(slot.Route)} is narrow enough for the vessel and has the ports that the rules speak of";
                return [];
            }

            slots.Add(options);
        }

        Dictionary<string, Combination> bestBySizes = new(StringComparer.Ordinal);
        Walk(slots, 0, [], bestBySizes);
        return [.. bestBySizes.Values
            .OrderBy(c => c.IsStopped ? 1 : 0)
            .ThenBy(c => c.Warnings)
            .ThenByDescending(c => c.Score)
            .ThenBy(c => c.Devices, StringComparer.Ordinal)
            .Take(count)];
    }

    private void Walk(List<List<SlotOption>> slots, int index, List<SlotOption> chosen, Dictionary<string, Combination> best)
    {
        if (index == slots.Count)
        {
            Combination candidate = Evaluate([.. chosen]);
            if (!best.TryGetValue(candidate.Sizes, out Combination? known) || Compare(candidate, known) < 0)
            {
                best[candidate.Sizes] = candidate;
            }

            return;
        }

        foreach (SlotOption option in slots[index])
        {
            if (IsPossible(option, chosen))
            {
                chosen.Add(option);
                Walk(slots, index + 1, chosen, best);
                chosen.RemoveAt(chosen.Count - 1);
            }
        }
    }

    /// <summary>Two cannulae do not share one vein; a distal perfusion cannula goes to the leg of the arterial one.</summary>
    private static bool IsPossible(SlotOption option, List<SlotOption> chosen)
    {
        foreach (SlotOption other in chosen)
        {
            bool sameVessel = other.Slot.Route == option.Slot.Route && other.Side == option.Side;
            bool otherLeg = option.Slot.Role == CannulaRole.DistalPerfusion
                && other.Slot.Role == CannulaRole.ArterialReturn
                && other.Side != option.Side;
            if (sameVessel || otherLeg)
            {
                return false;
            }
        }

        return true;
    }

    private static int Compare(Combination a, Combination b)
    {
        int stops = a.IsStopped.CompareTo(b.IsStopped);
        int warnings = a.Warnings.CompareTo(b.Warnings);
        int score = b.Score.CompareTo(a.Score);
        return stops != 0 ? stops : warnings != 0 ? warnings : score != 0 ? score : string.CompareOrdinal(a.Devices, b.Devices);
    }

    private List<SlotOption> OptionsFor(RoleSlot slot)
    {
        double flow = FlowThrough(slot.Role, need.FlowLPerMin.Value);
        LumenPurpose purpose = Combination.PurposeOf(slot.Role);
        List<ZoneRule> rules = [.. context.Rules.Zones.Where(
            rule => rule.Role == slot.Role && rule.Configurations.Contains(configuration.Configuration))];
        List<SlotOption> options = [];
        foreach (Cannula cannula in context.Catalogue.Cannulae)
        {
            if (!slot.Families.Contains(cannula.Family) || cannula.LumenFor(purpose) is null || !OnHand(cannula))
            {
                continue;
            }

            foreach (BodySide side in Enum.GetValues<BodySide>())
            {
                if (Option(slot, cannula, side, purpose, rules) is SlotOption option)
                {
                    options.Add(option);
                }
            }
        }

        return VenousEntry.Reaches(slot.Route) || options.Count == 0 ? options : [.. BestOffAxis(options, flow)];
    }

    private SlotOption? Option(RoleSlot slot, Cannula cannula, BodySide side, LumenPurpose purpose, List<ZoneRule> rules)
    {
        double ratio = cannula.OuterDiameterMm / context.Vessels.DiameterMm(slot.Route, side).Value;
        bool artery = slot.Route is AccessRoute.FemoralArtery or AccessRoute.AxillaryGraft or AccessRoute.SuperficialFemoralArtery;
        double most = context.Rules[artery ? LimitName.CannulaToArteryStop : LimitName.CannulaToVeinStop];
        if (ratio > most)
        {
            return null;
        }

        DepthWindows? windows = null;
        if (VenousEntry.Reaches(slot.Route))
        {
            windows = DepthWindows.Of(
                cannula, new VenousEntry(slot.Route, side), rules, context.Zones, context.Landmarks, context.LengthOutsideMm);
            if (windows is null)
            {
                return null;
            }
        }

        (int stops, int warnings) = VesselFindings(slot.Route, side);
        return new SlotOption(
            slot,
            cannula,
            side,
            ratio,
            context.Pressure(cannula, purpose),
            slot.Role == CannulaRole.DualLumen ? context.Pressure(cannula, LumenPurpose.Return) : null,
            windows,
            stops,
            warnings);
    }

    private bool OnHand(Cannula cannula) =>
        context.Case.DevicesOnHand.Count == 0 || context.Case.DevicesOnHand.Contains(cannula.Id, StringComparer.Ordinal);

    private (int Stops, int Warnings) VesselFindings(AccessRoute route, BodySide side)
    {
        int stops = 0;
        int warnings = 0;
        foreach (FindingRule rule in context.Rules.Findings)
        {
            bool applies = CaseFacts.IsOfOneVessel(rule.Fact)
                && (rule.Routes.Count == 0 || rule.Routes.Contains(route))
                && rule.State == FactState.Present
                && context.Facts.Of(rule.Fact, route, side) == Finding.Present;
            stops += applies && rule.Grade == FindingGrade.Stop ? 1 : 0;
            warnings += applies && rule.Grade == FindingGrade.Warning ? 1 : 0;
        }

        return (stops, warnings);
    }

    private IEnumerable<SlotOption> BestOffAxis(List<SlotOption> options, double flow)
    {
        bool distal = options[0].Slot.Role == CannulaRole.DistalPerfusion;
        double most = distal ? MostDistalDropMmHg : context.Rules[LimitName.ReturnPressureMmHg] / 2;
        return options
            .GroupBy(option => option.Side)
            .SelectMany(side => side
                .OrderBy(option => option.Drop.DropMmHg(flow) > most ? 1 : 0)
                .ThenBy(option => option.Ratio)
                .ThenBy(option => option.Cannula.Id, StringComparer.Ordinal)
                .Take(distal ? 1 : KeptOffAxis));
    }

    /// <summary>Flow through the cannula of a role at a pump flow, L/min.</summary>
    internal double FlowThrough(CannulaRole role, double flow)
    {
        double venous = context.Rules[LimitName.VenousShareOfReturn];
        return (configuration.Kind, role) switch
        {
            (SupportKind.VenoArterioVenous, CannulaRole.VenousReturn) => flow * venous,
            (SupportKind.VenoArterioVenous, CannulaRole.ArterialReturn) => flow * (1 - venous),
            (_, CannulaRole.DistalPerfusion) => CriteriaValues.DistalPerfusionFlowLPerMin * Math.Min(1, flow / 4),
            _ => flow,
        };
    }

    /// <summary>Inlet pressure and pressure after the lung at a pump flow, mmHg.</summary>
    internal (double Inlet, double Return) Pressures(IReadOnlyList<SlotOption> options, double flow)
    {
        double drainage = 0;
        double? arterial = null;
        double? venous = null;
        foreach (SlotOption option in options)
        {
            double drop = option.Drop.DropMmHg(FlowThrough(option.Slot.Role, flow));
            switch (option.Slot.Role)
            {
                case CannulaRole.Drainage:
                    drainage = drop;
                    break;
                case CannulaRole.DualLumen:
                    drainage = drop;
                    venous = option.ReturnDrop!.DropMmHg(flow);
                    break;
                case CannulaRole.VenousReturn:
                    venous = drop;
                    break;
                case CannulaRole.ArterialReturn:
                    arterial = drop;
                    break;
                default:
                    break;
            }
        }

        return (circuit.InletMmHg(flow, drainage), circuit.ReturnMmHg(flow, arterial, venous));
    }

    private Combination Evaluate(IReadOnlyList<SlotOption> options)
    {
        double flow = need.FlowLPerMin.Value;
        (double inlet, double ret) = Pressures(options, flow);
        if (!circuit.WithinLimits(inlet, ret))
        {
            double low = 0.05;
            double high = flow;
            for (int i = 0; i < FlowHalvings; i++)
            {
                double middle = (low + high) / 2;
                (inlet, ret) = Pressures(options, middle);
                (low, high) = circuit.WithinLimits(inlet, ret) ? (middle, high) : (low, middle);
            }

            flow = low;
            (inlet, ret) = Pressures(options, flow);
        }

        int fit = FitTogether(options);
        double probability = (double)fit / context.Samples.Count;
        double[] values = criteria.Of(options, flow, inlet, ret, probability);
        bool misses = probability < context.Rules[LimitName.FitProbabilityStop] || flow < LeastShareOfNeed * need.FlowLPerMin.Value;
        return new Combination(options, flow, inlet, ret, fit, values, scale.Score(values), misses);
    }

    private int FitTogether(IReadOnlyList<SlotOption> options)
    {
        DepthWindows? first = null;
        DepthWindows? second = null;
        foreach (SlotOption option in options)
        {
            if (option.Slot.Role is CannulaRole.Drainage or CannulaRole.DualLumen)
            {
                first = option.Windows;
            }
            else if (option.Slot.Role == CannulaRole.VenousReturn)
            {
                second = option.Windows;
            }
        }

        (DepthWindows, DepthWindows?) key = (first!, second);
        if (!joint.TryGetValue(key, out int count))
        {
            count = JointFit.Mark(first!, second, context.Landmarks, context.Rules[LimitName.PortSeparationMm] * SeparationScale, marks);
            joint.Add(key, count);
        }

        return count;
    }

    /// <summary>In a small body ports cannot be as far apart; the distance shrinks with height as the zones do.</summary>
    internal double SeparationScale => Math.Min(1, context.Case.Patient.HeightCm / 170);
}
