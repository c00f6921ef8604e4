using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Patients;

/// <summary>Gathers the readings of all kinds of events into the course of each quantity.</summary>
internal static class SeriesFold
{
    /// <summary>Folds standing entries.</summary>
    /// <param name="ordered">Standing entries by when they happened.</param>
    /// <returns>The course of each quantity that was read.</returns>
    public static IReadOnlyDictionary<ObservedQuantity, QuantitySeries> Of(IEnumerable<StandingEntry> ordered)
    {
        SortedDictionary<ObservedQuantity, List<SeriesPoint>> points = [];
        foreach (StandingEntry entry in ordered)
        {
            bool imported = entry.Now.Event is Observed { Import: not null };
            foreach (Reading reading in ReadingsIn(entry.Now.Event))
            {
                if (!points.TryGetValue(reading.Quantity, out List<SeriesPoint>? all))
                {
                    points[reading.Quantity] = all = [];
                }

                all.Add(new SeriesPoint(
                    entry.Now.OccurredAt, reading.Value, reading.Sd ?? QuantityTable.Of(reading.Quantity).UsualSd, reading.Sd is not null, entry.Sequence, reading.Method, imported));
            }
        }

        return points.ToDictionary(static p => p.Key, static p => new QuantitySeries(p.Key, p.Value));
    }

    /// <summary>What an event says was read.</summary>
    /// <param name="happened">The event.</param>
    /// <returns>The readings; of a weaning step, flow and sweep gas too.</returns>
    public static IEnumerable<Reading> ReadingsIn(CourseEvent happened) => happened switch
    {
        Observed observed => observed.Readings,
        AnticoagulationChecked checkedNow => checkedNow.Readings,
        WeaningStarted started => started.Readings,
        SupportStarted started => started.Readings,
        WeaningStepped stepped => [.. stepped.Readings, .. Settings(stepped)],
        _ => [],
    };

    private static IEnumerable<Reading> Settings(WeaningStepped stepped)
    {
        (ObservedQuantity Quantity, double? Value)[] settings =
        [
            (ObservedQuantity.PumpFlowLPerMin, stepped.FlowLPerMin),
            (ObservedQuantity.SweepLPerMin, stepped.SweepLPerMin),
            (ObservedQuantity.SweepOxygenFraction, stepped.SweepOxygenFraction),
        ];

        // A flow that runs backwards is outside the range of the quantity and stands with the trial alone.
        return settings
            .Where(s => s.Value is double value && QuantityTable.Check(s.Quantity, value, string.Empty) is null && stepped.Readings.All(r => r.Quantity != s.Quantity))
            .Select(static s => Reading.Of(s.Quantity, s.Value!.Value));
    }
}
