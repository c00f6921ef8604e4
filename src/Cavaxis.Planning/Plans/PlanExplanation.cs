using System.Globalization;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>Why a plan stands where it stands, in sentences.</summary>
internal static class PlanExplanation
{
    /// <summary>The plan with its explanation.</summary>
    /// <param name="plan">The plan with criteria, cannulae and circuit.</param>
    /// <param name="rules">Limits.</param>
    /// <param name="saturationPercent">Arterial saturation to be told.</param>
    /// <param name="deliveryToConsumption">Oxygen delivery over consumption to be told.</param>
    /// <returns>The plan, explained.</returns>
    public static CannulationPlan Explained(
        this CannulationPlan plan, RuleBook rules, Estimate saturationPercent, Estimate deliveryToConsumption)
    {
        CriterionValue[] weighed = [.. plan.Criteria.Where(criterion => criterion.Weight > 0)];
        CriterionValue strongest = weighed.MaxBy(c => c.Points * c.Weight)!;
        CriterionValue weakest = weighed.MaxBy(c => (1 - c.Points) * c.Weight)!;
        CircuitPoint circuit = plan.Circuit;
        List<string> sentences =
        [
            string.Create(CultureInfo.InvariantCulture, $"Sized for {plan.Flow.FlowLPerMin.Value:F1} L/min: {plan.Flow.Reason}."),
            string.Create(CultureInfo.InvariantCulture, $"At {circuit.FlowLPerMin:F1} L/min the inlet is at {circuit.InletPressureMmHg.Value:F0} mmHg and the return at {circuit.ReturnPressureMmHg.Value:F0} mmHg (limits {rules[LimitName.InletPressureMmHg]:F0} and {rules[LimitName.ReturnPressureMmHg]:F0})."),
            string.Create(CultureInfo.InvariantCulture, $"Every port can be brought into its zone in {plan.ProbabilityAllPortsInZone * 100:F0} % of the anatomies this patient may have."),
            string.Create(CultureInfo.InvariantCulture, $"Expected saturation {saturationPercent.Value:F0} % ({saturationPercent.Low:F0} to {saturationPercent.High:F0}), oxygen delivery {deliveryToConsumption.Value:F1} times consumption."),
            string.Create(CultureInfo.InvariantCulture, $"Gains most from {PlainCriterion.Words(strongest.Name)}, loses most by {PlainCriterion.Words(weakest.Name)}."),
        ];
        sentences.AddRange(plan.Cannulae
            .Where(c => c.Fit?.LimitingRule is not null)
            .Select(c => $"{PlainWords.Role(c.Role)}: {c.Fit!.LimitingReason}"));
        return plan with { Explanation = sentences };
    }
}
