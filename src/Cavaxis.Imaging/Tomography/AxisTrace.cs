namespace Cavaxis.Imaging.Tomography;

/// <summary>What tracing gave: an axis, or the reason why there is none. Never both.</summary>
public sealed record AxisTrace
{
    private AxisTrace(TracedAxis? axis, TraceFailure? failure, SpaceCurve? course, TraceQuality? quality, IReadOnlyList<TraceCaution> cautions) =>
        (Axis, Failure, Course, Quality, Cautions) = (axis, failure, course, quality, cautions);

    /// <summary>The axis; null where there is none.</summary>
    public TracedAxis? Axis { get; }

    /// <summary>Why there is none; null where there is one.</summary>
    public TraceFailure? Failure { get; }

    /// <summary>
    /// The cheapest way between the seeds, before any wall was looked for: with a failure it is what there is to look at, and nothing to take
    /// diameters, junctions or angles from. Null where the seeds were refused.
    /// </summary>
    public SpaceCurve? Course { get; }

    /// <summary>What was measured of the quality; null where it did not come that far.</summary>
    public TraceQuality? Quality { get; }

    /// <summary>What a person should look at before an axis is used; none where there is no axis.</summary>
    public IReadOnlyList<TraceCaution> Cautions { get; }

    /// <summary>An axis.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="quality">Its quality.</param>
    /// <param name="cautions">What to look at.</param>
    internal static AxisTrace Found(TracedAxis axis, TraceQuality quality, IReadOnlyList<TraceCaution> cautions) => new(axis, null, axis.Line, quality, cautions);

    /// <summary>No axis.</summary>
    /// <param name="failure">Why not.</param>
    /// <param name="course">The way that was looked at.</param>
    /// <param name="quality">What was measured of the quality.</param>
    internal static AxisTrace None(TraceFailure failure, SpaceCurve? course, TraceQuality? quality = null) => new(null, failure, course, quality, []);
}
