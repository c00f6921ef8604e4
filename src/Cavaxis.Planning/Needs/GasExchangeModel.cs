using Cavaxis.Blood.Demand;
using Cavaxis.Blood.Oxygen;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Configurations;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Needs;

/// <summary>
/// What a flow is expected to do for oxygen. Veno-venous: between the separated limit (no recirculation) and complete mixing,
/// without help from the native lung. Veno-arterial: pump blood mixed with what the heart still adds up to the flow target.
/// Uncertainty of consumption, output and haemoglobin by three-point Gauss-Hermite nodes (docs/models/planning.md).
/// </summary>
internal sealed class GasExchangeModel(PatientReading reading, CaseFile caseFile, RuleBook rules)
{
    private const double LowestOutputLPerMin = 0.2;

    /// <summary>A heart that is not in arrest is taken to eject at least this share of its output before support (assumption).</summary>
    private const double LeastEjectedShare = 0.15;

    /// <summary>Saturation of blood from the native lung where the case gives none (assumptions).</summary>
    private const double FailingLungPercent = 75;
    private const double WorkingLungPercent = 95;
    private static readonly double[] Nodes = [-Math.Sqrt(3), 0, Math.Sqrt(3)];
    private static readonly double[] NodeWeights = [1.0 / 6, 2.0 / 3, 1.0 / 6];

    private bool LungsFail => caseFile.Support.Goal is SupportGoal.GasExchange or SupportGoal.Both;

    /// <summary>Bound of complete mixing: Q / (Q + CO).</summary>
    /// <param name="flowLPerMin">Flow returned to the vein.</param>
    /// <returns>Fraction, 0 to 1.</returns>
    public double CompleteMixing(double flowLPerMin) =>
        flowLPerMin / (flowLPerMin + Math.Max(LowestOutputLPerMin, reading.Picture.CardiacOutputLPerMin.Value));

    /// <summary>Arterial saturation and delivery over consumption at the middle of everything, for comparing many combinations.</summary>
    /// <param name="kind">Where the blood returns.</param>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <param name="systemicTargetLPerMin">Systemic flow target.</param>
    /// <returns>Saturation 0 to 1 and delivery over consumption.</returns>
    public (double Saturation, double DeliveryToConsumption) Middle(SupportKind kind, double flowLPerMin, double systemicTargetLPerMin) =>
        At(kind, flowLPerMin, systemicTargetLPerMin, 0.5, 0, 0, 0);

    /// <summary>The outlook with its spread.</summary>
    /// <param name="kind">Where the blood returns.</param>
    /// <param name="flowLPerMin">Pump flow.</param>
    /// <param name="systemicTargetLPerMin">Systemic flow target.</param>
    /// <returns>The outlook.</returns>
    public GasExchangeOutlook Outlook(SupportKind kind, double flowLPerMin, double systemicTargetLPerMin)
    {
        List<(double Saturation, double Delivery, double Weight)> values = [];
        double[] recirculations = kind == SupportKind.VenoVenous ? [0, 0.5, 1] : [0];
        for (int r = 0; r < recirculations.Length; r++)
        {
            for (int i = 0; i < 3; i++)
            {
                for (int j = 0; j < 3; j++)
                {
                    for (int k = 0; k < 3; k++)
                    {
                        (double s, double d) = At(kind, flowLPerMin, systemicTargetLPerMin, recirculations[r], Nodes[i], Nodes[j], Nodes[k]);
                        values.Add((s, d, NodeWeights[i] * NodeWeights[j] * NodeWeights[k] / recirculations.Length));
                    }
                }
            }
        }

        (double middle, double delivery) = Middle(kind, flowLPerMin, systemicTargetLPerMin);
        double bound = kind == SupportKind.VenoArterial ? 0 : CompleteMixing(VenousFlow(kind, flowLPerMin));
        PatientPicture p = reading.Picture;
        double pump = OxygenDissociation.SaturationAt(rules[LimitName.PostMembranePo2MmHg], reading.Conditions);
        double output = p.CardiacOutputLPerMin.Value;
        double ratio = output > 0 ? flowLPerMin / output : 0;
        return new GasExchangeOutlook(
            Estimate.WithInterval(bound / 2, bound / Math.Sqrt(12), 0, bound, Origin.Calculated),
            Spread(values.Select(v => (v.Saturation * 100, v.Weight)), middle * 100),
            Estimate.Normal(pump * 100, 0.5, Origin.Estimated),
            Spread(values.Select(v => (v.Delivery, v.Weight)), delivery),
            output > 0 ? Estimate.Normal(ratio, ratio * p.CardiacOutputLPerMin.Sd / output, Origin.Calculated) : null,
            Note(kind));
    }

    private double VenousFlow(SupportKind kind, double flow) => kind switch
    {
        SupportKind.VenoVenous => flow,
        SupportKind.VenoArterioVenous => flow * rules[LimitName.VenousShareOfReturn],
        _ => 0,
    };

    private (double Saturation, double DeliveryToConsumption) At(
        SupportKind kind, double flow, double target, double recirculation, double consumptionNode, double outputNode, double haemoglobinNode)
    {
        PatientPicture p = reading.Picture;
        double consumption = Math.Max(0.2 * p.OxygenConsumptionMlPerMin.Value, At(p.OxygenConsumptionMlPerMin, consumptionNode));
        double output = Math.Max(LowestOutputLPerMin, At(p.CardiacOutputLPerMin, outputNode));
        double haemoglobin = Math.Clamp(At(p.HaemoglobinGPerDl, haemoglobinNode), 3, 24);
        double post = OxygenContent.FromPo2(haemoglobin, rules[LimitName.PostMembranePo2MmHg], reading.Conditions, BloodConstants.Default);
        if (kind == SupportKind.VenoVenous)
        {
            double fraction = recirculation * flow / (flow + output);
            double effective = Math.Clamp(flow * (1 - fraction), 1e-3, output);
            OxygenBalance balance = VenoVenousSupport.Balance(effective, output, post, consumption);
            return (Saturation(balance.ArterialContentMlPerDl, haemoglobin), Math.Max(0, balance.DeliveryOverConsumption));
        }

        return Arterial(kind, flow, target, consumption, output, haemoglobin, post);
    }

    /// <summary>
    /// Return to an artery. Delivery counts the mixed systemic flow. The saturation told is that of the blood which reaches
    /// heart and brain first: what the heart ejects after femoral return, the mixture after axillary return or in arrest.
    /// </summary>
    private (double Saturation, double DeliveryToConsumption) Arterial(
        SupportKind kind, double flow, double target, double consumption, double output, double haemoglobin, double post)
    {
        double venous = VenousFlow(kind, flow);
        double arterial = flow - venous;
        bool ejects = caseFile.Support.Goal != SupportGoal.Arrest;
        double native = ejects ? Math.Max(Math.Max(output, target) - arterial, LeastEjectedShare * output) : 0;
        double nativeContent = NativeContent(venous, Math.Max(native, LowestOutputLPerMin), consumption, haemoglobin, post);
        double content = ((arterial * post) + (native * nativeContent)) / (arterial + native);
        double first = ejects ? nativeContent : content;
        return (Saturation(first, haemoglobin), 10 * (arterial + native) * content / consumption);
    }

    /// <summary>Content of the blood that the heart ejects: from the native lung, helped by what the pump returns to a vein.</summary>
    private double NativeContent(double venousReturn, double native, double consumption, double haemoglobin, double post)
    {
        double saturation = (caseFile.Blood.ArterialSaturationPercent?.Value ?? (LungsFail ? FailingLungPercent : WorkingLungPercent)) / 100;
        double own = OxygenContent.MlPerDl(
            haemoglobin, saturation, OxygenDissociation.Po2At(Math.Min(saturation, 0.995), reading.Conditions), BloodConstants.Default);
        if (venousReturn <= 0)
        {
            return own;
        }

        // The returned part that is not drained again replaces as much venous blood before the lung.
        double share = Math.Min(1, venousReturn * (1 - (CompleteMixing(venousReturn) / 2)) / native);
        return Math.Max(own, (share * post) + ((1 - share) * own));
    }

    private static double At(Estimate estimate, double node) => estimate.Value + (node * estimate.Sd);

    private double Saturation(double content, double haemoglobin) => content <= 0
        ? 0
        : OxygenContent.SaturationAt(content, haemoglobin, reading.Conditions, BloodConstants.Default);

    private static Estimate Spread(IEnumerable<(double Value, double Weight)> nodes, double middle)
    {
        (double Value, double Weight)[] sorted = [.. nodes.OrderBy(node => node.Value)];
        double mean = sorted.Sum(node => node.Value * node.Weight);
        double sd = Math.Sqrt(sorted.Sum(node => node.Weight * (node.Value - mean) * (node.Value - mean)));
        double low = sorted[0].Value;
        double high = sorted[^1].Value;
        double sum = 0;
        foreach ((double value, double weight) in sorted)
        {
            low = sum < 0.05 ? value : low;
            sum += weight;
            if (sum >= 0.95)
            {
                high = value;
                break;
            }
        }

        return Estimate.WithInterval(middle, sd, Math.Min(low, middle), Math.Max(high, middle), Origin.Calculated);
    }

    private string Note(SupportKind kind) => kind == SupportKind.VenoVenous
        ? FormattableString.Invariant($"Interval spans the separated and the complete-mixing limit of recirculation; no help from the native lung; PO2 after the membrane lung {rules[LimitName.PostMembranePo2MmHg]:F0} mmHg.")
        : "Saturation of the blood that the heart ejects, which reaches heart and brain first; delivery counts pump blood and ejected blood together. Where the two meet in the aorta is not computed yet.";
}
