using Cavaxis.Course.Observations;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities;

namespace Cavaxis.Bedside.Readouts;

/// <summary>Readings that were taken together, or why there are none.</summary>
internal sealed class Drawn
{
    private readonly PatientCourse course;
    private readonly Dictionary<ObservedQuantity, SeriesPoint> points;

    private Drawn(PatientCourse course, Dictionary<ObservedQuantity, SeriesPoint> points, string? trouble) => (this.course, this.points, Trouble) = (course, points, trouble);

    /// <summary>Why they do not serve; null where they do.</summary>
    public string? Trouble { get; }

    /// <summary>When the first of them was taken.</summary>
    public DateTimeOffset At => points.Values.Min(static p => p.At);

    /// <summary>One of them.</summary>
    public Estimate this[ObservedQuantity quantity] => Estimate.Normal(points[quantity].Value, points[quantity].Sd, Origin.Measured);

    /// <summary>The last readings of quantities that belong together.</summary>
    /// <param name="course">The course.</param>
    /// <param name="now">The moment.</param>
    /// <param name="quantities">Which.</param>
    public static Drawn Of(PatientCourse course, DateTimeOffset now, params IReadOnlyList<ObservedQuantity> quantities)
    {
        Dictionary<ObservedQuantity, SeriesPoint> found = [];
        List<string> missing = [];
        foreach (ObservedQuantity quantity in quantities)
        {
            if (course.Series.GetValueOrDefault(quantity)?.AsOf(now, CourseGases.Stale) is SeriesPoint point)
            {
                found[quantity] = point;
            }
            else
            {
                missing.Add(QuantityTable.Of(quantity).Words);
            }
        }

        string? trouble = missing.Count > 0 ? $"not read in the last {CourseGases.Stale.TotalHours:0} h: {string.Join(", ", missing)}"
            : found.Values.Max(static p => p.At) - found.Values.Min(static p => p.At) > CourseGases.Together ? "the last samples were not drawn within an hour of each other"
            : null;
        return new Drawn(course, found, trouble);
    }

    /// <summary>A reading of another quantity taken with them.</summary>
    /// <param name="quantity">Which.</param>
    /// <returns>The reading; null where none was.</returns>
    public Estimate? Beside(ObservedQuantity quantity) => course.Series.GetValueOrDefault(quantity)?.Points
        .Where(p => p.At >= At - CourseGases.Together && p.At <= At + CourseGases.Together).MinBy(p => (p.At - At).Duration()) is SeriesPoint point
            ? Estimate.Normal(point.Value, point.Sd, Origin.Measured)
            : null;
}
