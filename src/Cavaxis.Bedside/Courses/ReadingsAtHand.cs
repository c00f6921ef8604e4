using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities;
using static Cavaxis.Course.Observations.ObservedQuantity;

namespace Cavaxis.Bedside.Courses;

/// <summary>
/// Readings that count as taken together. They are those nearest to the last blood drawn after the membrane lung (where none was, to the last reading of the circuit),
/// not more than <see cref="Together"/> from it; that one is not older than <see cref="Stale"/>. Haemoglobin changes slowly: the last of <see cref="HaemoglobinStands"/> stands.
/// The three spans are assumptions of this project.
/// </summary>
public sealed class ReadingsAtHand
{
    /// <summary>How old the readings may be.</summary>
    public static readonly TimeSpan Stale = TimeSpan.FromHours(6);

    /// <summary>How far apart readings may be that count as taken together.</summary>
    public static readonly TimeSpan Together = TimeSpan.FromHours(1);

    /// <summary>How long a haemoglobin stands.</summary>
    public static readonly TimeSpan HaemoglobinStands = TimeSpan.FromHours(24);

    private static readonly ObservedQuantity[] OfTheCircuit =
        [PreMembraneSaturationPercent, PostMembranePo2MmHg, PreMembranePressureMmHg, PostMembranePressureMmHg, PumpFlowLPerMin, RecirculationPercent];

    private readonly PatientCourse course;
    private readonly DateTimeOffset now;

    private ReadingsAtHand(PatientCourse course, DateTimeOffset now, DateTimeOffset at) => (this.course, this.now, At) = (course, now, at);

    /// <summary>The time about which they were taken.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The readings of a course.</summary>
    /// <param name="course">The course.</param>
    /// <param name="now">The moment; what was read later does not count.</param>
    /// <returns>The readings; null where nothing of the circuit was read in time.</returns>
    public static ReadingsAtHand? Of(PatientCourse course, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(course);
        DateTimeOffset? at = LastOf(course, now, PostMembraneSaturationPercent) ?? OfTheCircuit.Select(q => LastOf(course, now, q)).Max();
        return at is DateTimeOffset about ? new ReadingsAtHand(course, now, about) : null;
    }

    /// <summary>A reading.</summary>
    /// <param name="quantity">What.</param>
    /// <returns>The reading; null where none belongs to the others.</returns>
    public ReadingAtHand? Find(ObservedQuantity quantity)
    {
        if (course.Series.GetValueOrDefault(quantity) is not QuantitySeries series)
        {
            return null;
        }

        SeriesPoint? point = quantity == HaemoglobinGPerDl
            ? series.AsOf(now, HaemoglobinStands)
            : series.Points.Where(p => p.At <= now && (p.At - At).Duration() <= Together).MinBy(p => (p.At - At).Duration());
        return point is null ? null : ReadingAtHand.Of(quantity, point);
    }

    /// <summary>A reading with its error.</summary>
    /// <param name="quantity">What.</param>
    /// <returns>The reading; null where none belongs to the others.</returns>
    public Estimate? this[ObservedQuantity quantity] => Find(quantity)?.Estimate;

    /// <summary>Those of some quantities that were read.</summary>
    /// <param name="quantities">Which.</param>
    /// <returns>The readings, in the order asked for.</returns>
    public IReadOnlyList<ReadingAtHand> Read(params IEnumerable<ObservedQuantity> quantities) => [.. quantities.Select(Find).OfType<ReadingAtHand>()];

    /// <summary>Words of those that were not read.</summary>
    /// <param name="quantities">Which are needed.</param>
    /// <returns>Their words, in the order asked for.</returns>
    public IReadOnlyList<string> Missing(params IEnumerable<ObservedQuantity> quantities) =>
        [.. quantities.Where(q => Find(q) is null).Select(static q => QuantityTable.Of(q).Words)];

    private static DateTimeOffset? LastOf(PatientCourse course, DateTimeOffset now, ObservedQuantity quantity) =>
        course.Series.GetValueOrDefault(quantity)?.AsOf(now, Stale)?.At;
}
