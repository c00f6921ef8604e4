using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;

namespace Cavaxis.Course.Weaning;

/// <summary>A trial as the record tells it, made ready to be judged.</summary>
public static class RecordedTrial
{
    /// <summary>
    /// The trial. What was read before it began is its first step. A step ends when it was written down; it lasted as long as noted there, or else since
    /// the step before, and never reaches back into that one.
    /// </summary>
    /// <param name="log">What the record tells.</param>
    /// <param name="predictedWeightKg">Predicted body weight for tidal volumes, kg; null where it is not known.</param>
    /// <returns>The trial; null where its method has no published criteria here, or nothing was read yet.</returns>
    public static WeaningTrial? Of(WeaningTrialLog log, double? predictedWeightKg)
    {
        ArgumentNullException.ThrowIfNull(log);
        if (KindOf(log.Started.Event.Method) is not WeaningKind kind)
        {
            return null;
        }

        List<WeaningStep> steps = [];
        double ended = 0;
        foreach (Logged<WeaningStepped> one in log.Steps)
        {
            double end = Math.Clamp((one.OccurredAt - log.Started.OccurredAt).TotalMinutes, ended, WeaningStep.LongestMin);
            double start = Math.Max(ended, end - (one.Event.MinutesHeld ?? double.PositiveInfinity));
            steps.Add(new WeaningStep(start, end - start, one.Event.FlowLPerMin, one.Event.SweepLPerMin, WeaningReadings.From(one.Event.Readings, predictedWeightKg)));
            ended = end;
        }

        if (Before(log, predictedWeightKg) is WeaningStep before)
        {
            steps.Insert(0, before);
        }

        return steps.Count == 0 ? null : new WeaningTrial(kind, steps);
    }

    /// <summary>Which published trial a method is.</summary>
    /// <param name="method">The method.</param>
    /// <returns>The trial; null where none was published that is judged here.</returns>
    public static WeaningKind? KindOf(WeaningMethod method) => method switch
    {
        WeaningMethod.FlowSteps or WeaningMethod.RetrogradeFlow => WeaningKind.VenoArterialFlow,
        WeaningMethod.SweepSteps => WeaningKind.VenoVenousSweep,
        _ => null,
    };

    // An instant: how long support had run like that says nothing of the trial.
    private static WeaningStep? Before(WeaningTrialLog log, double? predictedWeightKg)
    {
        IReadOnlyList<Reading> readings = log.Started.Event.Readings;
        return readings.Count == 0 ? null : new WeaningStep(
            0, 0, Of(readings, ObservedQuantity.PumpFlowLPerMin, -3, 10), Of(readings, ObservedQuantity.SweepLPerMin, 0, 20), WeaningReadings.From(readings, predictedWeightKg));
    }

    private static double? Of(IReadOnlyList<Reading> readings, ObservedQuantity quantity, double low, double high) =>
        readings.FirstOrDefault(r => r.Quantity == quantity)?.Value is double value && value >= low && value <= high ? value : null;
}
