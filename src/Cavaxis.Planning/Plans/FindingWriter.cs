using Cavaxis.Anatomy.Axis;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Needs;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>Writes the findings of one plan: what the rule book says of the case, and what the numbers say against the limits.</summary>
internal sealed class FindingWriter(PlanningContext context)
{
    /// <summary>Source of what a plan says about itself.</summary>
    public static readonly Source Computed = new("computed by this plan", Certainty.Derived);

    /// <summary>All findings, gravest first.</summary>
    /// <param name="configuration">The configuration.</param>
    /// <param name="combination">Devices and sides.</param>
    /// <param name="need">Flow asked for.</param>
    /// <param name="gas">Oxygen.</param>
    /// <param name="fit">Probability that all ports can be brought into their zones.</param>
    /// <returns>Findings.</returns>
    public IReadOnlyList<PlanFinding> Of(
        ConfigurationTable configuration, Combination combination, FlowNeed need, GasExchangeOutlook gas, double fit)
    {
        List<PlanFinding> findings = [];
        FromRules(configuration, combination, findings);
        FromFit(combination, fit, findings);
        FromRatios(combination, findings);
        FromFlow(configuration, combination, need, gas, findings);
        return [.. findings.OrderByDescending(finding => finding.Grade).ThenBy(finding => finding.Id, StringComparer.Ordinal)];
    }

    private void FromRules(ConfigurationTable configuration, Combination combination, List<PlanFinding> findings)
    {
        foreach (FindingRule rule in context.Rules.Findings)
        {
            if (rule.Configurations.Count > 0 && !rule.Configurations.Contains(configuration.Configuration))
            {
                continue;
            }

            List<SlotOption> touched = [.. combination.Options.Where(
                option => rule.Routes.Count == 0 || rule.Routes.Contains(option.Slot.Route))];
            if (touched.Count == 0)
            {
                continue;
            }

            Finding wanted = rule.State == FactState.Present ? Finding.Present : Finding.Unknown;
            Source source = rule.ToSource();
            if (!CaseFacts.IsOfOneVessel(rule.Fact))
            {
                if (context.Facts.Of(rule.Fact) == wanted)
                {
                    findings.Add(new PlanFinding(rule.Id, rule.Grade, rule.Says, rule.Resolve, source));
                }

                continue;
            }

            List<SlotOption> hit = [.. touched.Where(option => context.Facts.Of(rule.Fact, option.Slot.Route, option.Side) == wanted)];
            if (hit.Count > 0)
            {
                string where = string.Join(", ", hit.Select(option => PlainWords.Vessel(option.Slot.Route, option.Side)).Distinct());
                findings.Add(new PlanFinding(rule.Id, rule.Grade, $"{rule.Says} ({where})", rule.Resolve, source));
            }
        }
    }

    private void FromFit(Combination combination, double fit, List<PlanFinding> findings)
    {
        double stop = context.Rules[LimitName.FitProbabilityStop];
        double warning = context.Rules[LimitName.FitProbabilityWarning];
        if (fit >= warning)
        {
            return;
        }

        string says = FormattableString.Invariant($"Every port can be brought into its zone in only {fit * 100:F0} % of the anatomies that this patient may have.");
        string resolve = combination.Draining.Slot.Role == CannulaRole.DualLumen
            ? "Measure the distance between the cavo-atrial junctions and the depth from the neck, enter lower on the neck, use a longer device, or choose a two-site plan."
            : "Measure the axis (see the value of each measurement) or choose another device or plan.";
        findings.Add(new PlanFinding(
            "fit", fit < stop ? FindingGrade.Stop : FindingGrade.Warning, says, resolve, Computed));
    }

    private void FromRatios(Combination combination, List<PlanFinding> findings)
    {
        foreach (SlotOption option in combination.Options)
        {
            if (option.Slot.Route == AccessRoute.AxillaryGraft)
            {
                FromAxillaryArtery(option, findings);
                continue;
            }

            bool vein = option.Slot.Route is AccessRoute.Jugular or AccessRoute.FemoralVein;
            double caution = context.Rules[vein ? LimitName.CannulaToVeinCaution : LimitName.CannulaToArteryCaution];
            if (option.Ratio <= caution)
            {
                continue;
            }

            bool measured = context.Vessels.DiameterMm(option.Slot.Route, option.Side).Origin == Origin.Measured;
            findings.Add(new PlanFinding(
                $"ratio-{PlainWords.Key(option.Slot.Role)}",
                vein ? FindingGrade.Caution : FindingGrade.Warning,
                FormattableString.Invariant($"{option.Cannula.OuterDiameterFrench:F0} Fr takes {option.Ratio * 100:F0} % of the {PlainWords.Vessel(option.Slot.Route, option.Side)} ({(measured ? "measured" : "estimated for this body size")}); the limit for caution is {caution * 100:F0} %."),
                measured ? "Use a smaller cannula, another vessel, or accept with close watch of flow round the cannula." : "Measure the vessel with ultrasound.",
                Computed));
        }
    }

    /// <summary>The cannula lies in the graft, so its ratio to the artery says nothing; the artery itself must take the flow.</summary>
    private void FromAxillaryArtery(SlotOption option, List<PlanFinding> findings)
    {
        AxisDimension dimension = AccessVessels.DimensionOf(VesselName.AxillaryArtery, option.Side)!.Value;
        Estimate artery = context.Axis.Interval(dimension);
        if (artery.Value < context.Rules[LimitName.AxillaryArteryCautionMm])
        {
            findings.Add(new PlanFinding(
                "axillary-narrow",
                artery.Origin == Origin.Measured ? FindingGrade.Warning : FindingGrade.Caution,
                FormattableString.Invariant($"The {PlainWords.Side(option.Side)} axillary artery is {artery.Value:F1} mm wide ({artery.Low:F1} to {artery.High:F1}, {(artery.Origin == Origin.Measured ? "measured" : "estimated for this body size")})."),
                "Measure it; a narrow artery limits the flow through a graft and can overperfuse the arm.",
                context.Rules.SourceOf(LimitName.AxillaryArteryCautionMm)));
        }
    }

    private void FromFlow(
        ConfigurationTable configuration, Combination combination, FlowNeed need, GasExchangeOutlook gas, List<PlanFinding> findings)
    {
        double wanted = need.FlowLPerMin.Value;
        if (combination.FlowLPerMin < 0.98 * wanted)
        {
            findings.Add(new PlanFinding(
                "flow-short",
                combination.FlowLPerMin < context.Rules[LimitName.FlowShareStop] * wanted ? FindingGrade.Stop : FindingGrade.Warning,
                FormattableString.Invariant($"These cannulae carry {combination.FlowLPerMin:F1} of the {wanted:F1} L/min wanted within the usual pressure limits."),
                "Use larger cannulae, a second drainage cannula, or accept the lower flow and its saturation.",
                Computed));
        }

        double output = context.Reading.Picture.CardiacOutputLPerMin.Value;
        double least = context.Rules[LimitName.FlowToCardiacOutput];
        if (configuration.Kind == SupportKind.VenoVenous && output > 0 && combination.FlowLPerMin / output < least)
        {
            findings.Add(new PlanFinding(
                "flow-to-output", FindingGrade.Warning,
                FormattableString.Invariant($"Flow is {combination.FlowLPerMin / output * 100:F0} % of cardiac output; below {least * 100:F0} % saturation is in doubt."),
                "Raise the flow, lower the output where it is driven by fever or agitation, raise haemoglobin.", context.Rules.SourceOf(LimitName.FlowToCardiacOutput)));
        }

        findings.AddRange(OxygenFindings.Of(context.Case, context.Rules, gas.ArterialSaturationPercent, gas.DeliveryToConsumption));
    }
}
