using Cavaxis.Blood.Demand;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Needs;

/// <summary>The flow that each configuration must carry for this patient, and why (docs/models/planning.md).</summary>
internal sealed class FlowPlanner(PatientReading reading, SupportSection support, RuleBook rules)
{
    private const double LowestFlowLPerMin = 0.1;
    private const double HighestFlowLPerMin = 8;

    private double Saturation => (support.TargetSaturationPercent ?? rules[LimitName.TargetSaturationPercent]) / 100;

    /// <summary>Systemic flow to reach, L/min.</summary>
    public double SystemicTargetLPerMin =>
        (support.TargetCardiacIndexLPerMinPerM2 ?? rules[LimitName.TargetCardiacIndexLPerMinPerM2]) * reading.Picture.BodySurfaceAreaM2.Value;

    /// <summary>Oxygen content after the membrane lung, mL/dL.</summary>
    public double PostMembraneContentMlPerDl => OxygenContent.FromPo2(
        reading.Picture.HaemoglobinGPerDl.Value, rules[LimitName.PostMembranePo2MmHg], reading.Conditions, BloodConstants.Default);

    /// <summary>The need of one configuration.</summary>
    /// <param name="configuration">The configuration.</param>
    /// <returns>Flow with reason and every candidate considered.</returns>
    public FlowNeed For(ConfigurationKind configuration)
    {
        if (support.FlowLPerMin is double asked)
        {
            return Choose([("asked for in the case", asked, new Source("support.flowLPerMin of the case file", Certainty.Seen))], 0);
        }

        return ConfigurationTable.Of(configuration).Kind switch
        {
            SupportKind.VenoVenous => VenoVenous(),
            SupportKind.VenoArterial => VenoArterial(1),
            _ => VenoArterial(1 - rules[LimitName.VenousShareOfReturn]),
        };
    }

    private FlowNeed VenoVenous()
    {
        double output = Math.Max(0.2, reading.Picture.CardiacOutputLPerMin.Value);
        double po2 = OxygenDissociation.Po2At(Saturation, reading.Conditions);
        double target = OxygenContent.MlPerDl(reading.Picture.HaemoglobinGPerDl.Value, Saturation, po2, BloodConstants.Default);
        double? effective = VenoVenousSupport.EffectiveFlowLPerMin(
            target, output, PostMembraneContentMlPerDl, reading.Picture.OxygenConsumptionMlPerMin.Value);
        List<(string, double, Source)> candidates = [];
        if (effective is double separated)
        {
            candidates.Add((
                FormattableString.Invariant($"oxygen at {Saturation * 100:F0} % without the native lung, midway between no recirculation ({separated:F1} L/min) and complete mixing"),
                WithMidwayRecirculation(separated, output),
                new Source("oxygen balance in closed form, docs/models/blood.md", Certainty.ClosedForm)));
        }
        else
        {
            candidates.Add((
                FormattableString.Invariant($"even the whole cardiac output of {output:F1} L/min through the lung does not reach {Saturation * 100:F0} %; sized for it"),
                output,
                new Source("oxygen balance in closed form, docs/models/blood.md", Certainty.ClosedForm)));
        }

        candidates.Add((
            FormattableString.Invariant($"{rules[LimitName.FlowToCardiacOutput] * 100:F0} % of cardiac output"),
            rules[LimitName.FlowToCardiacOutput] * output,
            rules.SourceOf(LimitName.FlowToCardiacOutput)));
        return Choose(candidates, RelativeSd());
    }

    private FlowNeed VenoArterial(double arterialShare)
    {
        double target = SystemicTargetLPerMin;
        double native = reading.Picture.CardiacOutputLPerMin.Value;
        List<(string, double, Source)> candidates =
        [
            (arterialShare < 1
                    ? FormattableString.Invariant($"the whole systemic flow target of {target:F1} L/min to the artery, with {(1 - arterialShare) * 100:F0} % of the return going to the vein")
                    : FormattableString.Invariant($"the whole systemic flow target of {target:F1} L/min, so that the cannulae suffice if the heart stops"),
                target / arterialShare,
                rules.SourceOf(LimitName.TargetCardiacIndexLPerMinPerM2)),
        ];
        if (reading.CardiacOutputKnown && target > native)
        {
            candidates.Add((
                FormattableString.Invariant($"target less the native output of {native:F1} L/min"),
                (target - native) / arterialShare,
                new Source("difference of target and measured output", Certainty.Derived)));
        }

        return Choose(candidates, 0.05);
    }

    /// <summary>
    /// Pump flow whose effective part is as needed when the recirculated fraction is half of the complete-mixing bound
    /// Q/(Q + CO): Q (1 − Q/(2(Q + CO))) = Qe, a quadratic in Q.
    /// </summary>
    private static double WithMidwayRecirculation(double effective, double output)
    {
        // Q² + 2 CO Q − 2 Qe (Q + CO) = 0
        double b = (2 * output) - (2 * effective);
        return (-b + Math.Sqrt((b * b) + (8 * effective * output))) / 2;
    }

    private double RelativeSd()
    {
        double consumption = reading.Picture.OxygenConsumptionMlPerMin.Sd / reading.Picture.OxygenConsumptionMlPerMin.Value;
        double haemoglobin = reading.Picture.HaemoglobinGPerDl.Sd / reading.Picture.HaemoglobinGPerDl.Value;
        return double.Hypot(consumption, haemoglobin);
    }

    private static FlowNeed Choose(List<(string Reason, double Flow, Source Source)> candidates, double relativeSd)
    {
        int largest = 0;
        for (int i = 1; i < candidates.Count; i++)
        {
            largest = candidates[i].Flow > candidates[largest].Flow ? i : largest;
        }

        double wanted = candidates[largest].Flow;
        double flow = Math.Clamp(wanted, LowestFlowLPerMin, HighestFlowLPerMin);
        string reason = wanted > HighestFlowLPerMin
            ? FormattableString.Invariant($"{candidates[largest].Reason}; {wanted:F1} L/min wanted, sized for the largest flow considered, {HighestFlowLPerMin:F0} L/min")
            : candidates[largest].Reason;
        FlowCandidate[] all = [.. candidates.Select((c, i) => new FlowCandidate(c.Reason, c.Flow, c.Source, i == largest))];
        Origin origin = relativeSd == 0 ? Origin.Measured : Origin.Calculated;
        return new FlowNeed(Estimate.Normal(flow, relativeSd * flow, origin), reason, all);
    }
}
