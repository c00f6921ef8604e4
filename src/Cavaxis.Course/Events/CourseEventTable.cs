using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.Events;

/// <summary>All kinds of events. A text once in use is never given to another kind.</summary>
public static class CourseEventTable
{
    /// <summary>Text of the kind that takes an entry back; the only one that is the record's own and not the course's.</summary>
    public const string WithdrawnText = "record.withdrawn";

    /// <summary>Every kind.</summary>
    public static IReadOnlyList<CourseEventKind> All { get; } =
    [
        CourseEventKind.Of<CaseSaved>("course.case-saved", "case"),
        CourseEventKind.Of<PlanChosen>("course.plan-chosen", "plan chosen"),
        CourseEventKind.Of<StepDone>("course.step-done", "step done"),
        CourseEventKind.Of<StepSkipped>("course.step-skipped", "step passed over"),
        CourseEventKind.Of<CannulaPlaced>("course.cannula-placed", "cannula placed"),
        CourseEventKind.Of<PositionRead>("course.position-read", "position"),
        CourseEventKind.Of<CannulaMoved>("course.cannula-moved", "cannula moved"),
        CourseEventKind.Of<CannulaRemoved>("course.cannula-removed", "cannula removed"),
        CourseEventKind.Of<SupportStarted>("course.support-started", "support started"),
        CourseEventKind.Of<SupportChanged>("course.support-changed", "support changed"),
        CourseEventKind.Of<SupportEnded>("course.support-ended", "support ended"),
        CourseEventKind.Of<Observed>("course.observed", "observed"),
        CourseEventKind.Of<AnticoagulationSet>("course.anticoagulation-set", "anticoagulation"),
        CourseEventKind.Of<AnticoagulationChecked>("course.anticoagulation-checked", "anticoagulation checked"),
        CourseEventKind.Of<ImagingDone>("course.imaging-done", "imaging"),
        CourseEventKind.Of<ComplicationSeen>("course.complication-seen", "complication"),
        CourseEventKind.Of<ComplicationEnded>("course.complication-ended", "complication over"),
        CourseEventKind.Of<WeaningStarted>("course.weaning-started", "weaning trial started"),
        CourseEventKind.Of<WeaningStepped>("course.weaning-stepped", "weaning step"),
        CourseEventKind.Of<WeaningEnded>("course.weaning-ended", "weaning trial ended"),
        CourseEventKind.Of<FollowUpPlanned>("course.follow-up-planned", "follow-up planned"),
        CourseEventKind.Of<FollowUpFound>("course.follow-up-found", "follow-up"),
        CourseEventKind.Of<OpinionAsked>("course.opinion-asked", "opinion asked"),
        CourseEventKind.Of<OpinionAnswered>("course.opinion-answered", "opinion"),
        CourseEventKind.Of<OutcomeNoted>("course.outcome-noted", "outcome"),
        CourseEventKind.Of<NoteWritten>("course.note-written", "note"),
        CourseEventKind.Of<EntryWithdrawn>(WithdrawnText, "withdrawn"),
    ];

    private static readonly Dictionary<string, CourseEventKind> ByText = All.ToDictionary(static k => k.Text, StringComparer.Ordinal);

    private static readonly Dictionary<Type, CourseEventKind> ByType = All.ToDictionary(static k => k.Type);

    /// <summary>The kind of an event.</summary>
    /// <param name="happened">The event.</param>
    /// <returns>Its kind.</returns>
    public static CourseEventKind Of(CourseEvent happened)
    {
        ArgumentNullException.ThrowIfNull(happened);
        return ByType[happened.GetType()];
    }

    /// <summary>The kind of a type of events.</summary>
    /// <typeparam name="T">The type.</typeparam>
    /// <returns>Its kind.</returns>
    public static CourseEventKind Of<T>()
        where T : CourseEvent => ByType[typeof(T)];

    /// <summary>The kind of a text.</summary>
    /// <param name="text">Such as <c>course.observed</c>.</param>
    /// <returns>The kind; null where no kind has that text.</returns>
    public static CourseEventKind? Find(string text) => ByText.GetValueOrDefault(text);

    /// <summary>The kind of a text.</summary>
    /// <param name="text">Such as <c>course.observed</c>.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="InputFaultException">No kind has that text.</exception>
    public static CourseEventKind Get(string text) => Find(text) ?? throw new InputFaultException(new InputFault(
        FaultCode.NotAChoice, "kind", InputFault.Shown(text), $"one of {string.Join(", ", All.Select(static k => k.Text))}", "Use one of these kinds, or a later version of this program."));
}
