using Cavaxis.Devices.Cannulae;
using Cavaxis.Devices.Hydraulics;
using Cavaxis.Planning.Circuit;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Fit;
using Cavaxis.Planning.Ranking;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>Turns a combination of devices into a plan that a person can read, with every number computed afresh at its flow.</summary>
internal sealed class PlanWriter(PlanningContext context, ConfigurationTable configuration, ConfigurationSearch search, CriteriaScale scale)
{
    private const int ChartPoints = 17;

    /// <summary>Writes the plan; rank and Pareto mark are set later.</summary>
    /// <param name="combination">Devices and sides.</param>
    /// <returns>The plan.</returns>
    public CannulationPlan Write(Combination combination)
    {
        double fit = (double)combination.FitCount / context.Samples.Count;
        (SlotOption drainage, DepthChoice drainageDepth, SlotOption? back, DepthChoice backDepth) = Depths(combination);
        int blind = JointFit.CountBlind(
            drainage.Windows!, drainageDepth.DepthMm, back?.Windows, backDepth.DepthMm, context.Landmarks, context.SeparationMm);
        GasExchangeOutlook gas = context.Gas.Outlook(
            configuration.Kind, combination.FlowLPerMin, context.Flows.SystemicTargetLPerMin);
        IReadOnlyList<PlanFinding> findings = new FindingWriter(context).Of(configuration, combination, search.Need, gas, fit);
        PlacedCannula[] cannulae = [.. combination.Options.Select(option => Place(
            option, combination.FlowLPerMin, ReferenceEquals(option, drainage) ? drainageDepth : backDepth))];
        CircuitPoint circuit = CircuitAt(combination, cannulae);
        CriterionValue[] criteria = [.. context.Rules.Criteria.Select((rule, i) => new CriterionValue(
            rule.Name, combination.Values[i], scale.Points(i, combination.Values[i]), scale.Weights[i], false))];
        return new CannulationPlan(
            0,
            configuration.Configuration,
            configuration.Name,
            search.Need,
            cannulae,
            circuit,
            gas,
            fit,
            (double)blind / context.Samples.Count,
            findings,
            criteria,
            combination.Score,
            false,
            [])
            .Explained(context.Rules, gas.ArterialSaturationPercent, gas.DeliveryToConsumption);
    }

    private static (SlotOption Drainage, DepthChoice Depth, SlotOption? Return, DepthChoice ReturnDepth) Depths(Combination combination)
    {
        SlotOption drainage = combination.Draining;
        SlotOption? back = combination.InRole(CannulaRole.VenousReturn);
        return (drainage, DepthChoice.Of(drainage.Windows!), back, back is null ? default : DepthChoice.Of(back.Windows!));
    }

    private PlacedCannula Place(SlotOption option, double pumpFlow, DepthChoice depth)
    {
        Cannula cannula = option.Cannula;
        double flow = search.FlowThrough(option.Slot.Role, pumpFlow);
        LumenPurpose purpose = Combination.PurposeOf(option.Slot.Role);
        LumenFlow hydraulics = CannulaHydraulics.At(cannula, purpose, flow, context.Blood);
        Lumen lumen = cannula.LumenFor(purpose)!;
        Estimate vessel = context.Vessels.DiameterMm(option.Slot.Route, option.Side);
        bool vein = VenousEntry.Reaches(option.Slot.Route);
        double limit = context.Rules[vein ? LimitName.CannulaToVeinCaution : LimitName.CannulaToArteryCaution];
        double outer = cannula.OuterDiameterMm;
        return new PlacedCannula(
            option.Slot.Role,
            cannula.Id,
            cannula.Description,
            cannula.OuterDiameterFrench,
            cannula.InsertableLengthMm / 10,
            option.Slot.Route,
            option.Side,
            vessel,
            Estimate.WithInterval(
                outer / vessel.Value, outer * vessel.Sd / (vessel.Value * vessel.Value), outer / vessel.High, outer / Math.Max(vessel.Low, 0.1),
                vessel.Origin == Origin.Measured ? Origin.Calculated : Origin.Estimated),
            context.Vessels.ProbabilityAtMost(option.Slot.Route, option.Side, outer, limit),
            flow,
            Drop(hydraulics),
            option.Slot.Role == CannulaRole.DualLumen
                ? Drop(CannulaHydraulics.At(cannula, LumenPurpose.Return, flow, context.Blood))
                : null,
            [.. lumen.HoleGroups
                .Select((group, i) => new HoleShare(group.Name, hydraulics.HoleShares[i]))
                .GroupBy(share => share.Port, StringComparer.Ordinal)
                .Select(group => new HoleShare(group.Key, group.Sum(share => share.Share)))],
            option.Windows is null ? null : FitSummary.Of(option.Windows, depth, context.Zones, context.Landmarks));
    }

    /// <summary>The viscosity of this patient's blood is uncertain too; turbulent drop grows with about its fourth root.</summary>
    private Estimate Drop(LumenFlow flow)
    {
        double drop = flow.PressureDropPa / UnitFactors.PascalsPerMmHg;
        Estimate viscosity = context.Reading.Picture.BloodViscosityMPaS;
        double relative = double.Hypot(flow.RelativeSd, 0.25 * viscosity.Sd / viscosity.Value);
        return Estimate.Normal(drop, drop * relative, Origin.Calculated);
    }

    private CircuitPoint CircuitAt(Combination combination, PlacedCannula[] cannulae)
    {
        CircuitModel circuit = search.Circuit;
        double flow = combination.FlowLPerMin;
        PlacedCannula drainage = cannulae.First(c => c.Role is CannulaRole.Drainage or CannulaRole.DualLumen);
        Estimate venousPressure = context.Reading.Picture.CentralVenousPressureMmHg;
        Estimate arterialPressure = context.Reading.Picture.MeanArterialPressureMmHg;
        double inlet = circuit.InletMmHg(flow, drainage.PressureDropMmHg.Value);
        Estimate? artery = cannulae.FirstOrDefault(c => c.Role == CannulaRole.ArterialReturn)?.PressureDropMmHg;
        Estimate? vein = drainage.ReturnPressureDropMmHg
            ?? cannulae.FirstOrDefault(c => c.Role == CannulaRole.VenousReturn)?.PressureDropMmHg;
        double back = circuit.ReturnMmHg(flow, artery?.Value, vein?.Value);
        double backSd = artery is not null
            ? double.Hypot(artery.Sd, arterialPressure.Sd)
            : double.Hypot(vein!.Sd, venousPressure.Sd);
        double inletSd = double.Hypot(drainage.PressureDropMmHg.Sd, venousPressure.Sd);
        double? speed = circuit.SpeedPerMin(flow, inlet, back);
        double speedSd = speed is double s ? 0.5 * s * double.Hypot(inletSd, backSd) / Math.Max(20, back - inlet) : 0;
        Estimate vco2 = context.Reading.Picture.CarbonDioxideProductionMlPerMin;
        double pco2 = Math.Clamp(context.Case.Blood.ArterialPco2MmHg?.Value ?? 40, 25, 80);
        double? sweep = circuit.Lung.SweepFor(Math.Min(1000, vco2.Value), pco2);
        return new CircuitPoint(
            circuit.Pump.Id,
            circuit.Lung.Id,
            flow,
            Estimate.Normal(inlet, inletSd, Origin.Calculated),
            inlet - context.Rules[LimitName.InletPressureMmHg],
            Estimate.Normal(back, backSd, Origin.Calculated),
            context.Rules[LimitName.ReturnPressureMmHg] - back,
            speed is double rpm ? Estimate.Normal(rpm, speedSd, Origin.Calculated) : null,
            sweep is double gas ? Estimate.Normal(gas, gas * vco2.Sd / vco2.Value, Origin.Calculated) : null,
            Chart(combination));
    }

    private PressureFlowPoint[] Chart(Combination combination)
    {
        double most = Math.Max(1, 1.4 * search.Need.FlowLPerMin.Value);
        PressureFlowPoint[] points = new PressureFlowPoint[ChartPoints];
        for (int i = 0; i < points.Length; i++)
        {
            double flow = Math.Max(0.05, most * i / (ChartPoints - 1));
            (double inlet, double back) = search.Pressures(combination.Options, flow);
            points[i] = new PressureFlowPoint(flow, inlet, back);
        }

        return points;
    }
}
