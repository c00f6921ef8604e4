using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.Outcomes;
using Cavaxis.Course.Patients;

namespace Cavaxis.Bedside.Programmes;

/// <summary>
/// What the record of a course says of each outcome that is counted. Survival, thrombosis and malposition are known only where someone wrote them down or looked; every other
/// complication counts as "no" once support has ended and nobody wrote it down. Conventions of this project, in <c>docs/models/outcomes.md</c>.
/// </summary>
public static class CourseOutcomes
{
    private const double HaemolysisAboveMgPerL = 500;
    private static readonly TimeSpan ADay = TimeSpan.FromDays(1);

    /// <summary>The outcomes.</summary>
    /// <param name="course">The course.</param>
    /// <param name="now">The present; whether someone lived a day after support is known a day after.</param>
    /// <returns>What is known; what is not is left out.</returns>
    public static IReadOnlyDictionary<CountedOutcome, bool> Of(PatientCourse course, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(course);
        Dictionary<CountedOutcome, bool> known = [];
        Put(CountedOutcome.SurvivedToDischarge, Survived(course));
        Put(CountedOutcome.Weaned, Weaned(course, now));
        Put(CountedOutcome.Malposition, Seen(course, ComplicationGravity.Treated, ComplicationKind.CannulaMalposition) ? true : course.Cannulae.Any(static c => c.LastImaged is not null) ? false : null);
        Put(CountedOutcome.VenousThrombosis, Thrombosis(course));
        bool ended = course.Runs.Count > 0 && course.Running is null;
        Put(CountedOutcome.LimbIschaemia, Declared(ComplicationGravity.Treated, ComplicationKind.LimbIschaemia, ComplicationKind.CompartmentSyndrome));
        Put(CountedOutcome.Bleeding, Declared(ComplicationGravity.Treated, ComplicationKind.CannulationSiteBleeding, ComplicationKind.OtherBleeding));
        Put(CountedOutcome.Haemolysis, Haemolysis(course) ? true : Declared(ComplicationGravity.Watched, ComplicationKind.Haemolysis));
        Put(CountedOutcome.Stroke, Declared(ComplicationGravity.Watched, ComplicationKind.Stroke, ComplicationKind.IntracranialBleeding));
        Put(CountedOutcome.CircuitExchange, Declared(ComplicationGravity.Watched, ComplicationKind.CircuitChange));
        Put(CountedOutcome.Infection, Declared(ComplicationGravity.Watched, ComplicationKind.CannulaInfection, ComplicationKind.BloodstreamInfection));
        return known;

        bool? Declared(ComplicationGravity from, params ComplicationKind[] kinds) => Seen(course, from, kinds) ? true : ended ? false : null;

        void Put(CountedOutcome kind, bool? happened)
        {
            if (happened is bool told)
            {
                known[kind] = told;
            }
        }
    }

    /// <summary>Left hospital alive, by the last entry that tells: one may be noted, and put right by a later one.</summary>
    private static bool? Survived(PatientCourse course)
    {
        bool? survived = course.Runs.Count > 0 && course.Runs[^1].Ended?.Event.Reason == SupportEndReason.Died ? false : null;
        foreach (Logged<OutcomeNoted> noted in course.All<OutcomeNoted>())
        {
            survived = noted.Event.Outcome switch
            {
                // The second is a death after discharge, by its definition.
                OutcomeKind.SurvivedToDischarge or OutcomeKind.DiedWithin90Days => true,
                OutcomeKind.DiedOnSupport or OutcomeKind.DiedAfterSupport => false,
                _ => survived,
            };
        }

        return survived;
    }

    /// <summary>Support removed, alive a day later, without support again.</summary>
    private static bool? Weaned(PatientCourse course, DateTimeOffset now)
    {
        if (course.Runs.Count == 0 || course.Runs[^1].Ended is not Logged<SupportEnded> ended)
        {
            return null;
        }

        bool diedWithinADay = course.All<OutcomeNoted>().Any(o => o.Event.Outcome is OutcomeKind.DiedOnSupport or OutcomeKind.DiedAfterSupport && o.OccurredAt < ended.OccurredAt + ADay);
        if (diedWithinADay || ended.Event.Reason is SupportEndReason.Died or SupportEndReason.Withdrawn or SupportEndReason.Bridged)
        {
            return false;
        }

        bool told = ended.Event.Reason == SupportEndReason.Recovered || course.All<OutcomeNoted>().Any(static o => o.Event.Outcome == OutcomeKind.WeanedFromSupport);
        return told && now >= ended.OccurredAt + ADay ? true : null;
    }

    private static bool? Thrombosis(PatientCourse course)
    {
        ClotFinding[] looked = [.. course.All<FollowUpFound>().SelectMany(static f => f.Event.Veins).Select(static v => v.Clot)];
        return Seen(course, ComplicationGravity.Watched, ComplicationKind.CannulatedVeinThrombosis) || looked.Any(static c => c is ClotFinding.Partial or ClotFinding.Complete) ? true
            : looked.Contains(ClotFinding.None) ? false
            : null;
    }

    private static bool Haemolysis(PatientCourse course) =>
        course.Series.TryGetValue(ObservedQuantity.FreeHaemoglobinMgPerL, out QuantitySeries? series) && series.Points.Any(static p => p.Value > HaemolysisAboveMgPerL);

    private static bool Seen(PatientCourse course, ComplicationGravity from, params ComplicationKind[] kinds) =>
        course.Complications.Any(c => kinds.Contains(c.Seen.Event.Complication) && c.Gravity >= from);
}
