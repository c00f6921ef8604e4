using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Weaning;

/// <summary>A step of a weaning trial: what was set, for how long, and what was read at its end.</summary>
public sealed record WeaningStep
{
    /// <summary>A step.</summary>
    /// <param name="startMinute">Start since the start of the trial, 0 to 10 080 min.</param>
    /// <param name="durationMin">How long it was held, 0 to 10 080 min.</param>
    /// <param name="flowLPerMin">Pump flow, −3 to 10 L/min, negative where it is let run backwards; null when it was not noted.</param>
    /// <param name="sweepLPerMin">Sweep gas, 0 to 20 L/min; null when it was not noted, which is not the same as off.</param>
    /// <param name="readings">What was read at its end; each quantity at most once.</param>
    /// <exception cref="InputFaultException">A number is out of range or a quantity stands twice.</exception>
    public WeaningStep(double startMinute, double durationMin, double? flowLPerMin, double? sweepLPerMin, IReadOnlyList<WeaningReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        StartMinute = Require.InRange(startMinute, 0, LongestMin, nameof(startMinute), "Give minutes since the start of the trial.");
        DurationMin = Require.InRange(durationMin, 0, LongestMin, nameof(durationMin), "Give the minutes that the step was held.");
        if (flowLPerMin is double flow)
        {
            Require.InRange(flow, -3, 10, nameof(flowLPerMin), "Give the pump flow in L/min.");
        }

        if (sweepLPerMin is double sweep)
        {
            Require.InRange(sweep, 0, 20, nameof(sweepLPerMin), "Give the sweep gas flow in L/min, 0 for off.");
        }

        (FlowLPerMin, SweepLPerMin) = (flowLPerMin, sweepLPerMin);
        Readings = Once(readings, nameof(readings));
    }

    /// <summary>Longest time in a trial, min: a week.</summary>
    public const double LongestMin = 10_080;

    /// <summary>Start since the start of the trial, min.</summary>
    public double StartMinute { get; }

    /// <summary>How long it was held, min.</summary>
    public double DurationMin { get; }

    /// <summary>Pump flow, L/min, negative where it ran backwards; null when it was not noted.</summary>
    public double? FlowLPerMin { get; }

    /// <summary>Sweep gas, L/min; null when it was not noted.</summary>
    public double? SweepLPerMin { get; }

    /// <summary>What was read.</summary>
    public IReadOnlyList<WeaningReading> Readings { get; }

    /// <summary>What the fitted model of this patient expected at this step; may be empty.</summary>
    /// <exception cref="InputFaultException">A quantity stands twice.</exception>
    public IReadOnlyList<WeaningReading> Expected { get; init => field = Once(value, "expected"); } = [];

    /// <summary>The reading of a quantity.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>Its value; null when it was not read.</returns>
    public Estimate? Of(WeaningQuantity quantity) => Readings.FirstOrDefault(r => r.Quantity == quantity)?.Value;

    private static WeaningReading[] Once(IReadOnlyList<WeaningReading> readings, string field)
    {
        ArgumentNullException.ThrowIfNull(readings);
        WeaningReading? twice = readings.GroupBy(static r => r.Quantity).FirstOrDefault(static g => g.Count() > 1)?.First();
        return twice is null
            ? [.. readings]
            : throw new InputFaultException(new InputFault(
                FaultCode.DuplicateField, field, twice.Quantity.ToString(), "each quantity once a step", "Keep the reading that was taken at the end of the step."));
    }
}
