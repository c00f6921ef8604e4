using System.Globalization;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>The computed circulation of a plan in sentences, for terminal and report alike.</summary>
public static class OutlookSentences
{
    /// <summary>Writes the sentences.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>One sentence or more; why there is no outlook where there is none.</returns>
    public static IReadOnlyList<string> Of(CannulationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Circulation is not { } outlook)
        {
            GasExchangeOutlook bounds = plan.GasExchange;
            string reason = plan.CirculationNote.Length > 0 ? plan.CirculationNote : "the circulation was not computed";
            return
            [
                FormattableString.Invariant($"Recirculation lies between {bounds.RecirculationFractionBounds.Low * 100:F0} and {bounds.RecirculationFractionBounds.High * 100:F0} % (separated and complete mixing); {reason}."),
            ];
        }

        List<string> sentences = [];
        if (outlook.RecirculationPercent is { } share)
        {
            sentences.Add(FormattableString.Invariant($"Recirculation {Interval(share, "F0")} % on the model of the circulation, moving between {outlook.RecirculationLowestPercent!.Value:F0} and {outlook.RecirculationHighestPercent!.Value:F0} % within a breath; saturation before the lung {Interval(outlook.PreMembraneSaturationPercent, "F0")} %."));
        }

        sentences.Add(FormattableString.Invariant($"Saturation of right arm, heart and brain {Interval(outlook.RightArmSaturationPercent, "F0")} %, of the lower body {Interval(outlook.LowerBodySaturationPercent, "F0")} %; oxygen delivery {Interval(outlook.DeliveryToConsumption, "F1")} times consumption; mean arterial pressure {Interval(outlook.MeanArterialPressureMmHg, "F0")} mmHg."));
        if (outlook.LeftVentricle is { } heart)
        {
            string stops = heart.ValveStopsOpeningAboveLPerMin is { } flow
                ? FormattableString.Invariant($"it stops opening above {Interval(flow, "F1")} L/min")
                : FormattableString.Invariant($"it still opens at {heart.HighestFlowComputedLPerMin:F1} L/min, the highest flow computed");
            sentences.Add(FormattableString.Invariant($"Left ventricle at this flow: pulmonary venous pressure {Interval(heart.WedgeMmHg, "F0")} mmHg ({heart.WedgeBeforeMmHg.Value:F0} without support), end-diastolic pressure {Interval(heart.EndDiastolicPressureMmHg, "F0")} mmHg and volume {Interval(heart.EndDiastolicVolumeMl, "F0")} mL, native output {Interval(heart.NativeOutputLPerMin, "F1")} L/min; the aortic valve is open for {Interval(heart.AorticValveOpenPercent, "F0")} % of the beat, and {stops}."));
        }

        sentences.Add(FormattableString.Invariant($"Calculated on {outlook.Members - outlook.NotSettled} patients who agree with the case{(outlook.NotSettled > 0 ? FormattableString.Invariant($" ({outlook.NotSettled} more did not come to rest)") : string.Empty)}; median and 90 % interval."));
        return [.. sentences, .. Arteries(plan.Arteries)];
    }

    private static IEnumerable<string> Arteries(ArterialGlance? glance)
    {
        if (glance is null)
        {
            yield break;
        }

        string half = glance.HalfCm is { } cm ? FormattableString.Invariant($", half from each at {Interval(cm, "F0")} cm from the aortic valve") : string.Empty;
        yield return FormattableString.Invariant($"Arterial tree: blood of heart and pump meet {glance.MeetingInWords}{half}; saturation of the blood to the heart muscle {Interval(glance.HeartSaturationPercent, "F0")} %, to the right hand {Interval(glance.RightHandSaturationPercent, "F0")} %.");
        if (glance.CannulatedLegInWords.Length > 0)
        {
            yield return $"{(glance.LegIsInWant ? "LEG IN WANT: " : string.Empty)}{glance.CannulatedLegInWords}";
        }
    }

    private static string Interval(Estimate e, string format) => string.Create(
        CultureInfo.InvariantCulture,
        $"{e.Value.ToString(format, CultureInfo.InvariantCulture)} ({e.Low.ToString(format, CultureInfo.InvariantCulture)} to {e.High.ToString(format, CultureInfo.InvariantCulture)})");
}
