using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Courses;

/// <summary>A reading as people are shown it.</summary>
/// <param name="Quantity">What was read.</param>
/// <param name="Words">Its words.</param>
/// <param name="Value">The value.</param>
/// <param name="Sd">Standard deviation of the reading.</param>
/// <param name="SdGiven">True where it was given with the reading; false for the usual one of the quantity.</param>
/// <param name="Unit">Unit of both; 1 for none.</param>
/// <param name="Origin">How the number came to be.</param>
/// <param name="At">When it was read.</param>
/// <param name="Entry">Number of the entry that holds it.</param>
/// <param name="Method">How it was read; null where that was not said.</param>
public sealed record ReadingAtHand(
    ObservedQuantity Quantity, string Words, double Value, double Sd, bool SdGiven, string Unit, Origin Origin, DateTimeOffset At, long Entry, string? Method)
{
    /// <summary>The value with its error.</summary>
    public Estimate Estimate => Estimate.Normal(Value, Sd, Origin);

    /// <summary>Of a point in the course of a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="point">The point.</param>
    /// <returns>The reading.</returns>
    public static ReadingAtHand Of(ObservedQuantity quantity, SeriesPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        QuantityDefinition of = QuantityTable.Of(quantity);
        return new ReadingAtHand(quantity, of.Words, point.Value, point.Sd, point.SdGiven, of.Unit, ReadingOrigin.Of(point.Method), point.At, point.Sequence, point.Method);
    }
}
