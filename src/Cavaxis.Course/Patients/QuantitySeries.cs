using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Patients;

/// <summary>The course of one quantity: what stands, by when it was read.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Points">At least one reading, oldest first; of two at the same time, the one entered earlier first.</param>
public sealed record QuantitySeries(ObservedQuantity Quantity, IReadOnlyList<SeriesPoint> Points)
{
    /// <summary>The last reading.</summary>
    public SeriesPoint Last => Points[^1];

    /// <summary>The last reading that is not later than a moment, and not older than a span before it.</summary>
    /// <param name="moment">The moment.</param>
    /// <param name="notOlderThan">How old it may be.</param>
    /// <returns>The reading; null where there is none.</returns>
    public SeriesPoint? AsOf(DateTimeOffset moment, TimeSpan notOlderThan) =>
        Points.LastOrDefault(p => p.At <= moment) is SeriesPoint point && moment - point.At <= notOlderThan ? point : null;

    /// <summary>Readings in a stretch of time.</summary>
    /// <param name="from">Not before.</param>
    /// <param name="before">Earlier than.</param>
    /// <returns>The readings, oldest first.</returns>
    public IReadOnlyList<SeriesPoint> Between(DateTimeOffset from, DateTimeOffset before) => [.. Points.Where(p => p.At >= from && p.At < before)];
}
