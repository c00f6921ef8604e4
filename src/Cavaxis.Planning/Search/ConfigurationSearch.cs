using System.Runtime.InteropServices;
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
    private const int FlowHalvings = 24;

    /// <summary>No configuration has more slots besides distal perfusion.</summary>
    private const int MostSizedSlots = 3;

    private readonly PlanningContext context;
    private readonly ConfigurationTable configuration;
    private readonly CriteriaScale scale;
    private readonly FlowNeed need;
    private readonly CircuitModel circuit;
    private readonly CriteriaValues criteria;
    private readonly Dictionary<(DepthWindows Drainage, DepthWindows Return), int> joint = [];
    private readonly ulong[] marks;
    private readonly double[] values;
    private readonly double venousShare;
    private readonly double leastFit;
    private readonly double leastFlowLPerMin;

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
        marks = new ulong[AnatomyBits.WordsFor(context.Samples.Count)];
        values = new double[context.Rules.Criteria.Count];
        venousShare = context.Rules[LimitName.VenousShareOfReturn];
        leastFit = context.Rules[LimitName.FitProbabilityStop];
        leastFlowLPerMin = context.Rules[LimitName.FlowShareStop] * need.FlowLPerMin.Value;
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
        SlotSearch devices = new(context, configuration);
        List<List<SlotOption>> slots = [];
        foreach (RoleSlot slot in configuration.Slots)
        {
            List<SlotOption> options = devices.For(slot, FlowThrough(slot.Role, need.FlowLPerMin.Value));
            slots.Add(options);
            if (options.Count == 0)
            {
                EmptyReason = slot.Route == AccessRoute.AxillaryGraft
                    ? FormattableString.Invariant($"no device fits the graft, or the axillary arteries are narrower than {context.Rules[LimitName.AxillaryArteryForGraftMm]:F1} mm")
                    : $"no device for {PlainWords.Role(slot.Role)} through {PlainWords.Route(slot.Route)} is narrow enough for the vessel and has the ports that the rules speak of";
                return [];
            }
        }

        PairVenousPorts(slots.SelectMany(options => options).ToLookup(option => option.Slot.Role));
        Dictionary<(double, double, double), Combination> bestBySizes = [];
        Walk(slots, 0, new SlotOption[slots.Count], bestBySizes);
        return [.. bestBySizes.Values
            .OrderBy(c => c.IsStopped ? 1 : 0)
            .ThenBy(c => c.Warnings)
            .ThenByDescending(c => c.Score)
            .ThenBy(c => c.Devices, StringComparer.Ordinal)
            .Take(count)];
    }

    /// <summary>Counts the anatomies that suit each drainage cannula together with each venous return cannula.</summary>
    private void PairVenousPorts(ILookup<CannulaRole, SlotOption> options)
    {
        foreach (SlotOption drainage in options[CannulaRole.Drainage])
        {
            foreach (SlotOption back in options[CannulaRole.VenousReturn])
            {
                if (IsPossible(back, [drainage]))
                {
                    joint.Add(
                        (drainage.Windows!, back.Windows!),
                        JointFit.Mark(drainage.Windows!, back.Windows, context.Landmarks, context.SeparationMm, marks));
                }
            }

            drainage.Windows!.Release();
        }

        foreach (SlotOption back in options[CannulaRole.VenousReturn])
        {
            back.Windows!.Release();
        }
    }

    private void Walk(
        List<List<SlotOption>> slots, int index, SlotOption[] chosen, Dictionary<(double, double, double), Combination> best)
    {
        if (index == slots.Count)
        {
            Candidate candidate = Evaluate(chosen);
            ref Combination? known = ref CollectionsMarshal.GetValueRefOrAddDefault(best, SizesOf(chosen), out _);
            if (known is null || IsBetter(candidate, chosen, known))
            {
                // Only here does a combination become an object (docs/performance.md).
                known = new Combination(
                    [.. chosen], candidate.Flow, candidate.Inlet, candidate.Return, candidate.FitCount, [.. values], candidate.Score, candidate.Misses);
            }

            return;
        }

        foreach (SlotOption option in slots[index])
        {
            if (IsPossible(option, chosen.AsSpan(0, index)))
            {
                chosen[index] = option;
                Walk(slots, index + 1, chosen, best);
            }
        }
    }

    /// <summary>The sizes without lengths and sides: combinations that agree in these are shown once, by their best member.</summary>
    private static (double, double, double) SizesOf(ReadOnlySpan<SlotOption> options)
    {
        Span<double> sizes = stackalloc double[MostSizedSlots];
        int next = 0;
        foreach (SlotOption option in options)
        {
            if (option.Slot.Role != CannulaRole.DistalPerfusion)
            {
                sizes[next++] = option.Cannula.OuterDiameterFrench;
            }
        }

        return (sizes[0], sizes[1], sizes[2]);
    }

    /// <summary>Two cannulae do not share one vein; a distal perfusion cannula goes to the leg of the arterial one.</summary>
    private static bool IsPossible(SlotOption option, ReadOnlySpan<SlotOption> chosen)
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

    private static bool IsBetter(in Candidate candidate, SlotOption[] options, Combination known)
    {
        int stops = candidate.IsStopped.CompareTo(known.IsStopped);
        int warnings = candidate.Warnings.CompareTo(known.Warnings);
        int score = known.Score.CompareTo(candidate.Score);
        int order = stops != 0 ? stops : warnings != 0 ? warnings : score;
        return order < 0 || (order == 0 && ComesFirst(options, known));
    }

    private static bool ComesFirst(SlotOption[] options, Combination known)
    {
        bool same = true;
        for (int i = 0; i < options.Length; i++)
        {
            same &= ReferenceEquals(options[i].Cannula, known.Options[i].Cannula);
        }

        return !same && string.CompareOrdinal(Combination.DevicesOf(options), known.Devices) < 0;
    }

    /// <summary>Flow through the cannula of a role at a pump flow, L/min.</summary>
    internal double FlowThrough(CannulaRole role, double flow)
    {
        return (configuration.Kind, role) switch
        {
            (SupportKind.VenoArterioVenous, CannulaRole.VenousReturn) => flow * venousShare,
            (SupportKind.VenoArterioVenous, CannulaRole.ArterialReturn) => flow * (1 - venousShare),
            (_, CannulaRole.DistalPerfusion) => CriteriaValues.DistalPerfusionFlowLPerMin * Math.Min(1, flow / 4),
            _ => flow,
        };
    }

    /// <summary>Inlet pressure and pressure after the lung at a pump flow, mmHg.</summary>
    internal (double Inlet, double Return) Pressures(ReadOnlySpan<SlotOption> options, double flow)
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

    /// <summary>Compares one choice; the values of its criteria are left in <see cref="values"/>.</summary>
    private Candidate Evaluate(ReadOnlySpan<SlotOption> options)
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
        criteria.Of(options, flow, inlet, ret, probability, values);
        bool misses = probability < leastFit || flow < leastFlowLPerMin;
        int stops = 0;
        int warnings = 0;
        foreach (SlotOption option in options)
        {
            stops += option.Stops;
            warnings += option.Warnings;
        }

        return new Candidate(flow, inlet, ret, fit, scale.Score(values), misses, misses || stops > 0, warnings);
    }

    private int FitTogether(ReadOnlySpan<SlotOption> options)
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

        return second is null ? first!.SuitableCount : joint[(first!, second)];
    }

    private readonly record struct Candidate(
        double Flow, double Inlet, double Return, int FitCount, double Score, bool Misses, bool IsStopped, int Warnings);
}
