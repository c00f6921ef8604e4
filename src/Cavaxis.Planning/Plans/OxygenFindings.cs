using Cavaxis.Planning.Case;
using Cavaxis.Planning.Rules;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>What the oxygen of a plan says against target and limits, from whichever model it was computed.</summary>
internal static class OxygenFindings
{
    private const string Saturation = "saturation";
    private const string Delivery = "oxygen-delivery";

    /// <summary>Whether a finding is one of these.</summary>
    /// <param name="finding">The finding.</param>
    /// <returns>True for these.</returns>
    public static bool Is(PlanFinding finding) => finding.Id is Saturation or Delivery;

    /// <summary>The findings.</summary>
    /// <param name="caseFile">The case with its target.</param>
    /// <param name="rules">Limits.</param>
    /// <param name="saturationPercent">Saturation of the blood that reaches heart and brain first.</param>
    /// <param name="deliveryToConsumption">Oxygen delivery over consumption.</param>
    /// <returns>None, one or two.</returns>
    public static IEnumerable<PlanFinding> Of(CaseFile caseFile, RuleBook rules, Estimate saturationPercent, Estimate deliveryToConsumption)
    {
        double target = caseFile.Support.TargetSaturationPercent ?? rules[LimitName.TargetSaturationPercent];
        if (saturationPercent.Value < target - 0.5)
        {
            yield return new PlanFinding(
                Saturation, FindingGrade.Warning,
                FormattableString.Invariant($"Expected saturation {saturationPercent.Value:F0} % ({saturationPercent.Low:F0} to {saturationPercent.High:F0}) is below the target of {target:F0} %."),
                "Raise flow or haemoglobin, lower consumption, accept what the native lung adds.", FindingWriter.Computed);
        }

        double ratio = rules[LimitName.DeliveryToConsumption];
        if (deliveryToConsumption.Value < ratio)
        {
            yield return new PlanFinding(
                Delivery, FindingGrade.Warning,
                FormattableString.Invariant($"Oxygen delivery is {deliveryToConsumption.Value:F1} times consumption ({deliveryToConsumption.Low:F1} to {deliveryToConsumption.High:F1}); below {ratio:F0} there is little reserve."),
                "Raise haemoglobin, flow or saturation; lower consumption.", rules.SourceOf(LimitName.DeliveryToConsumption));
        }
    }
}
