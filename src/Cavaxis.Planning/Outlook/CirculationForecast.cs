using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;
using static Cavaxis.Circulation.Signals.CirculationQuantity;

namespace Cavaxis.Planning.Outlook;

/// <summary>
/// Puts every plan on the model of the circulation. All patients of all plans are brought to rest together, eight side by side and on
/// all cores; each result is that of the patient alone, so that the order and the number of cores change nothing.
/// </summary>
/// <param name="context">The case.</param>
/// <param name="patients">The set of patients who agree with the case.</param>
/// <param name="scale">Points and weights of the criteria.</param>
internal sealed class CirculationForecast(PlanningContext context, PatientSet patients, CriteriaScale scale)
{
    /// <summary>Pump flows over the planned one at which valve opening is computed.</summary>
    private static readonly double[] SweepShares = [0.25, 0.5, 0.75, 1, 1.25];

    /// <summary>Members whose valve is followed over flow: with three the middle and two others tell the spread.</summary>
    private const int SweptMembers = 3;

    /// <summary>Computes the outlook of each plan.</summary>
    /// <param name="plans">The plans.</param>
    /// <param name="cancellation">Ends the computation.</param>
    /// <returns>The plans with outlook and findings, in order.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public CannulationPlan[] Of(IReadOnlyList<PlannedSupport> plans, CancellationToken cancellation = default)
    {
        if (patients.Members.Count == 0)
        {
            return [.. plans.Select(p => p.Plan with { CirculationNote = patients.Reason })];
        }

        List<CirculationParameters> all = [.. patients.Members];
        int[] first = new int[plans.Count];
        int[] sweep = new int[plans.Count];
        for (int p = 0; p < plans.Count; p++)
        {
            PlanPatients onPlan = new(context, patients, plans[p]);
            PlanCircuit circuit = onPlan.Circuit;
            first[p] = all.Count;
            all.AddRange(onPlan.All());
            sweep[p] = SameSweep(plans, p) is int same ? sweep[same] : all.Count;
            if (sweep[p] == all.Count && circuit.ArterialShare > 0)
            {
                all.AddRange(Swept().SelectMany(member => SweepFlows(plans[p]).Select(flow => circuit.Connect(member, flow))));
            }
        }

        IReadOnlyList<SettledState> settled = CirculationSimulator.SettleForComparison(all, cancellation);
        SettledState[] before = [.. settled.Take(patients.Members.Count)];
        return [.. plans.Select((p, i) => WithOutlook(
            p, before, [.. settled.Skip(first[i]).Take(patients.Members.Count)], [.. settled.Skip(sweep[i]).Take(SweptMembers * SweepShares.Length)]))];
    }

    /// <summary>Members whose valve is followed: those of the middle and of both ends of the set by contractility.</summary>
    private IEnumerable<CirculationParameters> Swept()
    {
        CirculationParameters[] sorted = [.. patients.Members.OrderBy(m => m[CirculationParameter.LeftVentricleElastanceMmHgPerMl])];
        return [sorted[0], sorted[sorted.Length / 2], sorted[^1]];
    }

    /// <summary>Where the blood enters the artery and how much of it decides over the valve, not the device: one sweep serves all plans alike.</summary>
    private static int? SameSweep(IReadOnlyList<PlannedSupport> plans, int index)
    {
        for (int i = 0; i < index; i++)
        {
            bool alike = plans[i].Configuration.Kind == plans[index].Configuration.Kind
                && IsAxillary(plans[i]) == IsAxillary(plans[index])
                && plans[i].Search.Need.FlowLPerMin.Value == plans[index].Search.Need.FlowLPerMin.Value;
            if (alike)
            {
                return i;
            }
        }

        return null;
    }

    private static bool IsAxillary(PlannedSupport plan) => plan.Plan.Configuration == ConfigurationKind.VaAxillaryGraft;

    private static IEnumerable<double> SweepFlows(PlannedSupport plan) =>
        SweepShares.Select(share => share * plan.Search.Need.FlowLPerMin.Value);

    private CannulationPlan WithOutlook(PlannedSupport planned, SettledState[] before, SettledState[] during, SettledState[] sweep)
    {
        CirculationSummary[] rest = [.. during.Where(s => s.Settled).Select(s => s.RequireSummary())];
        if (rest.Length < 2)
        {
            return planned.Plan with { CirculationNote = $"the circulation of this plan did not come to rest: {during.First(s => !s.Settled).Reason}" };
        }

        bool venous = planned.Configuration.Kind != SupportKind.VenoArterial;
        bool arterial = planned.Configuration.Kind != SupportKind.VenoVenous;
        CirculationOutlook outlook = new(
            during.Length,
            during.Length - rest.Length,
            Spread(rest, PumpFlowLPerMin),
            venous ? Spread(rest, RecirculationPercent) : null,
            venous ? Spread(rest, RecirculationLowestPercent) : null,
            venous ? Spread(rest, RecirculationHighestPercent) : null,
            Spread(rest, RightArmSaturationPercent),
            Spread(rest, LowerBodySaturationPercent),
            Spread(rest, PreMembraneSaturationPercent),
            Spread(rest, DeliveryOverConsumption),
            Spread(rest, MeanArterialPressureMmHg),
            arterial ? Loading(planned, before, rest, sweep) : null,
            patients.Assumed);
        IEnumerable<PlanFinding> findings = planned.Plan.Findings.Where(f => !OxygenFindings.Is(f))
            .Concat(OutlookFindings.Of(outlook, context.Rules))
            .Concat(OxygenFindings.Of(context.Case, context.Rules, outlook.RightArmSaturationPercent, outlook.DeliveryToConsumption));
        CriterionValue[] criteria = OutlookCriteria.Of(planned.Plan.Criteria, outlook, scale);
        return (planned.Plan with
        {
            Circulation = outlook,
            Findings = [.. findings.OrderByDescending(f => f.Grade).ThenBy(f => f.Id, StringComparer.Ordinal)],
            Criteria = criteria,
            Score = scale.Score([.. criteria.Select(c => c.Value)]),
        }).Explained(context.Rules, outlook.RightArmSaturationPercent, outlook.DeliveryToConsumption);
    }

    private static VentricleLoading Loading(PlannedSupport planned, SettledState[] before, CirculationSummary[] during, SettledState[] sweep)
    {
        CirculationSummary[] unsupported = [.. before.Where(s => s.Settled).Select(s => s.RequireSummary())];
        double[] flows = [.. SweepFlows(planned)];
        List<double> stops = [];
        for (int m = 0; m < sweep.Length / flows.Length; m++)
        {
            List<(double, double)> points = [.. flows
                .Select((_, i) => sweep[(m * flows.Length) + i])
                .Where(s => s.Settled)
                .Select(s => (s.RequireSummary()[PumpFlowLPerMin], s.RequireSummary()[AorticValveOpenPercent]))];
            if (points.Count > 1 && ValveClosing.FlowLPerMin(points) is double flow)
            {
                stops.Add(flow);
            }
        }

        return new VentricleLoading(
            unsupported.Length > 1 ? Spread(unsupported, WedgePressureMmHg) : Spread(during, WedgePressureMmHg),
            Spread(during, WedgePressureMmHg),
            Spread(during, LeftVentricularEndDiastolicPressureMmHg),
            Spread(during, LeftVentricularEndDiastolicVolumeMl),
            Spread(during, NativeOutputLPerMin),
            Spread(during, AorticValveOpenPercent),
            stops.Count > SweptMembers / 2 ? Middle(stops, flows[^1]) : null,
            flows[^1]);
    }

    /// <summary>Median of the flows; a member whose valve opens at every flow counts with the highest.</summary>
    private static Estimate Middle(List<double> stops, double highest)
    {
        double[] all = [.. stops.Concat(Enumerable.Repeat(highest, SweptMembers - stops.Count)).Order()];
        return Estimate.WithInterval(all[SweptMembers / 2], (all[^1] - all[0]) / 2, all[0], all[^1], Origin.Calculated);
    }

    private static Estimate Spread(CirculationSummary[] members, CirculationQuantity quantity) =>
        Estimate.FromSamples([.. members.Select(m => m[quantity])], Origin.Calculated);
}
