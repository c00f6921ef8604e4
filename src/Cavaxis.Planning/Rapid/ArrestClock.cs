using System.Globalization;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Rapid;

/// <summary>
/// Time without and with little circulation. The clock is given, never read: times of collapse, first compressions and now, or minutes.
/// Low flow ends when support flows; as long as nobody says when that will be, it is only known to be at least what has gone by.
/// </summary>
public sealed record ArrestClock
{
    private const double MostNoFlowMin = 240;
    private const double MostCompressionMin = 720;
    private const double MostToFlowMin = 240;

    private ArrestClock(NumberRange? noFlow, NumberRange? compressions, double? toFlowMin) =>
        (NoFlow, Compressions, ToFlowMin) = (noFlow, compressions, toFlowMin);

    /// <summary>Nothing is known.</summary>
    public static ArrestClock Unknown { get; } = new(null, null, null);

    /// <summary>Minutes from collapse to the first compressions.</summary>
    public NumberRange? NoFlow { get; }

    /// <summary>Minutes of compressions so far.</summary>
    public NumberRange? Compressions { get; }

    /// <summary>Minutes until support is expected to flow.</summary>
    public double? ToFlowMin { get; }

    /// <summary>Minutes from the first compressions to support flow.</summary>
    public NumberRange? LowFlow => Compressions is not { } so
        ? null
        : ToFlowMin is double more ? new NumberRange(so.Low + more, so.High + more) : NumberRange.AtLeast(so.Low);

    /// <summary>A clock from minutes.</summary>
    /// <param name="noFlowMin">Minutes from collapse to the first compressions, 0 to 240.</param>
    /// <param name="compressionMin">Minutes of compressions so far, 0 to 720.</param>
    /// <param name="toFlowMin">Minutes until support is expected to flow, 0 to 240.</param>
    /// <returns>The clock.</returns>
    /// <exception cref="InputFaultException">A number is out of range.</exception>
    public static ArrestClock FromMinutes(double? noFlowMin, double? compressionMin, double? toFlowMin) => new(
        Exactly(noFlowMin, MostNoFlowMin, "noFlowMin"), Exactly(compressionMin, MostCompressionMin, "lowFlowMin"), ToFlow(toFlowMin));

    /// <summary>A clock from times of one day or over midnight.</summary>
    /// <param name="collapse">Time of the collapse, where known.</param>
    /// <param name="compressions">Time of the first compressions; null where there are none yet, or it is not known.</param>
    /// <param name="now">Time now.</param>
    /// <param name="toFlowMin">Minutes until support is expected to flow, 0 to 240.</param>
    /// <returns>The clock.</returns>
    /// <exception cref="InputFaultException">The times cannot follow each other.</exception>
    public static ArrestClock FromTimes(TimeOnly? collapse, TimeOnly? compressions, TimeOnly now, double? toFlowMin)
    {
        // Time of day wraps: a difference that is too long means that the times stand in the wrong order.
        NumberRange? so = compressions is TimeOnly begun ? NumberRange.Exactly(Minutes(begun, now, MostCompressionMin, "compressions")) : null;
        NumberRange? without = (collapse, compressions) switch
        {
            (TimeOnly fell, TimeOnly first) => NumberRange.Exactly(Minutes(fell, first, MostNoFlowMin, "collapse")),
            (TimeOnly fell, null) => NumberRange.AtLeast(Minutes(fell, now, MostNoFlowMin, "collapse")),
            _ => null,
        };
        return new ArrestClock(without, so, ToFlow(toFlowMin));
    }

    private static double Minutes(TimeOnly from, TimeOnly to, double most, string field)
    {
        double minutes = (to - from).TotalMinutes;
        return minutes <= most
            ? minutes
            : throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, field, from.ToString("HH:mm", CultureInfo.InvariantCulture),
                string.Create(CultureInfo.InvariantCulture, $"at most {most:0} min before {to.ToString("HH:mm", CultureInfo.InvariantCulture)}"),
                "Give the times in the order collapse, compressions, now."));
    }

    private static NumberRange? Exactly(double? minutes, double most, string field) => minutes is double value
        ? NumberRange.Exactly(Require.InRange(value, 0, most, field, "Give minutes, or leave it out where it is not known."))
        : null;

    private static double? ToFlow(double? minutes) => minutes is double value
        ? Require.InRange(value, 0, MostToFlowMin, "toFlowMin", "Give the minutes until support is expected to flow, or leave it out.")
        : null;
}
