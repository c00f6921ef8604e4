namespace Cavaxis.Imaging.Tomography;

/// <summary>What tracing gave: an axis, or the reason why there is none. Never both.</summary>
public sealed record AxisTrace
{
    private AxisTrace(TracedAxis? axis, TraceFailure? failure, TraceQuality? quality) => (Axis, Failure, Quality) = (axis, failure, quality);

    /// <summary>The axis; null where there is none.</summary>
    public TracedAxis? Axis { get; }

    /// <summary>Why there is none; null where there is one.</summary>
    public TraceFailure? Failure { get; }

    /// <summary>What was measured of the quality; null where it did not come that far.</summary>
    public TraceQuality? Quality { get; }

    /// <summary>An axis.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="quality">Its quality.</param>
    internal static AxisTrace Found(TracedAxis axis, TraceQuality quality) => new(axis, null, quality);

    /// <summary>No axis.</summary>
    /// <param name="fault">What kind of failure.</param>
    /// <param name="words">What was measured, and what can be done.</param>
    /// <param name="quality">What was measured of the quality.</param>
    internal static AxisTrace None(TraceFault fault, string words, TraceQuality? quality = null) => new(null, new TraceFailure(fault, words), quality);
}
