using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Outlook;

/// <summary>What the computed circulation of a plan says against the limits of the rule book. Nothing here forbids a plan: the model is one witness.</summary>
internal static class OutlookFindings
{
    /// <summary>Findings of an outlook.</summary>
    /// <param name="outlook">The outlook.</param>
    /// <param name="rules">Limits.</param>
    /// <returns>Findings.</returns>
    public static IReadOnlyList<PlanFinding> Of(CirculationOutlook outlook, RuleBook rules)
    {
        List<PlanFinding> findings = [];
        double recirculation = rules[LimitName.RecirculationCautionPercent];
        if (outlook.RecirculationPercent is { } share && share.Value > recirculation)
        {
            findings.Add(new PlanFinding(
                "recirculation", FindingGrade.Caution,
                FormattableString.Invariant($"Expected recirculation is {share.Value:F0} % ({share.Low:F0} to {share.High:F0})."),
                "Place the ports farther apart under imaging, lower the flow, or choose another device; measure recirculation once support runs.",
                rules.SourceOf(LimitName.RecirculationCautionPercent)));
        }

        if (outlook.LeftVentricle is not { } heart)
        {
            return findings;
        }

        double wedge = rules[LimitName.WedgeUnderSupportMmHg];
        if (heart.WedgeMmHg.Value > wedge)
        {
            findings.Add(new PlanFinding(
                "ventricle-loading", FindingGrade.Warning,
                FormattableString.Invariant($"At this flow the pulmonary venous pressure is expected at {heart.WedgeMmHg.Value:F0} mmHg ({heart.WedgeMmHg.Low:F0} to {heart.WedgeMmHg.High:F0}); {heart.WedgeBeforeMmHg.Value:F0} without support. Above {wedge:F0} mmHg the lungs may flood."),
                "Plan how the left ventricle would be unloaded (balloon pump, vent, septal opening, inotropes, lower flow) before starting.",
                rules.SourceOf(LimitName.WedgeUnderSupportMmHg)));
        }

        double open = rules[LimitName.AorticValveOpenPercent];
        if (heart.AorticValveOpenPercent.Value < open)
        {
            string above = heart.ValveStopsOpeningAboveLPerMin is { } stop
                ? FormattableString.Invariant($" It is expected to stop opening above {stop.Value:F1} L/min ({stop.Low:F1} to {stop.High:F1}).")
                : string.Empty;
            findings.Add(new PlanFinding(
                "aortic-valve-shut", FindingGrade.Warning,
                FormattableString.Invariant($"The aortic valve is expected to open for {heart.AorticValveOpenPercent.Value:F0} % of the beat at this flow.{above}"),
                "Keep the flow as low as the organs allow, support contraction, plan unloading, watch the root for standing blood.",
                rules.SourceOf(LimitName.AorticValveOpenPercent)));
        }

        return findings;
    }
}
