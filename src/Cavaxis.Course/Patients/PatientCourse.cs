using System.Collections.Immutable;
using Cavaxis.Course.Events;
using Cavaxis.Course.Observations;
using Cavaxis.Course.RunSheets;

namespace Cavaxis.Course.Patients;

/// <summary>
/// The course of a patient: what the entries of the record say now. It follows from the entries alone, however they came in: in one piece or in parts,
/// in any order. What was corrected or withdrawn no longer counts but stays visible in <see cref="Entries"/> and <see cref="Timeline"/>.
/// </summary>
public sealed class PatientCourse
{
    private readonly ImmutableList<CourseEntry> raw;
    private readonly IReadOnlyList<StandingEntry> ordered;
    private readonly ILookup<Type, StandingEntry> byKind;
    private readonly Dictionary<long, long> originalOf = [];
    private readonly Lazy<IReadOnlyDictionary<ObservedQuantity, QuantitySeries>> series;
    private readonly Lazy<IReadOnlyList<LyingCannula>> cannulae;
    private readonly Lazy<IReadOnlyList<TimelineLine>> timeline;

    private PatientCourse(ImmutableList<CourseEntry> raw)
    {
        this.raw = raw;
        Entries = StandingEntry.Of(raw);
        foreach (StandingEntry entry in Entries)
        {
            foreach (CourseEntry one in entry.Corrections.Prepend(entry.Original))
            {
                originalOf[one.Sequence] = entry.Sequence;
            }
        }

        ordered = [.. Entries.Where(static e => !e.IsWithdrawn).OrderBy(static e => e.Now.OccurredAt).ThenBy(static e => e.Sequence)];
        byKind = ordered.ToLookup(static e => e.Now.Event.GetType());
        Version = raw.IsEmpty ? 0 : raw.Max(static e => e.Sequence);
        series = new(() => SeriesFold.Of(ordered));
        cannulae = new(() => CannulaFold.Of(ordered));
        timeline = new(() => TimelineFold.Of(Entries));
    }

    /// <summary>The course before anything was written down.</summary>
    public static PatientCourse Empty { get; } = new([]);

    /// <summary>Greatest number of an entry; 0 for none.</summary>
    public long Version { get; }

    /// <summary>Every entry with its corrections, in the order of their numbers; withdrawn ones too.</summary>
    public IReadOnlyList<StandingEntry> Entries { get; }

    /// <summary>The case in force: the one saved last; null where none was.</summary>
    public Logged<CaseSaved>? Case => Cases.Count > 0 ? Cases[^1] : null;

    /// <summary>Every case that stands, in the order in which they were saved.</summary>
    public IReadOnlyList<Logged<CaseSaved>> Cases => [.. All<CaseSaved>().OrderBy(static c => c.Sequence)];

    /// <summary>The plan chosen last; null where none was.</summary>
    public Logged<PlanChosen>? Plan => All<PlanChosen>() is { Count: > 0 } plans ? plans[^1] : null;

    /// <summary>The run sheet of that plan; null where no plan was chosen.</summary>
    public RunSheet? RunSheet => Plan is Logged<PlanChosen> plan
        ? RunSheet.Of(
            plan,
            [.. All<StepDone>().Where(s => Refers(s.Event.PlanEntry, plan.Sequence))],
            [.. All<StepSkipped>().Where(s => Refers(s.Event.PlanEntry, plan.Sequence))])
        : null;

    /// <summary>Every cannula, in the order in which they were placed; those taken out too.</summary>
    public IReadOnlyList<LyingCannula> Cannulae => cannulae.Value;

    /// <summary>The cannulae that lie now.</summary>
    public IReadOnlyList<LyingCannula> CannulaeIn => [.. Cannulae.Where(static c => c.IsIn)];

    /// <summary>The course of each quantity that was read.</summary>
    public IReadOnlyDictionary<ObservedQuantity, QuantitySeries> Series => series.Value;

    /// <summary>Runs of support, oldest first.</summary>
    public IReadOnlyList<SupportRun> Runs => SupportFold.Of(ordered);

    /// <summary>The run of support that goes on; null where none does.</summary>
    public SupportRun? Running => Runs is { Count: > 0 } runs && runs[^1].Ended is null ? runs[^1] : null;

    /// <summary>Trials of weaning, oldest first.</summary>
    public IReadOnlyList<WeaningTrialLog> WeaningTrials => [.. All<WeaningStarted>().Select(started => new WeaningTrialLog(
        started,
        [.. All<WeaningStepped>().Where(s => Refers(s.Event.TrialEntry, started.Sequence))],
        All<WeaningEnded>().LastOrDefault(e => Refers(e.Event.TrialEntry, started.Sequence))))];

    /// <summary>What went wrong, oldest first.</summary>
    public IReadOnlyList<ComplicationLog> Complications => [.. All<ComplicationSeen>().Select(seen => new ComplicationLog(
        seen, All<ComplicationEnded>().LastOrDefault(e => Refers(e.Event.ComplicationEntry, seen.Sequence))))];

    /// <summary>The outcome noted last by when it happened; null where none was.</summary>
    public Logged<OutcomeNoted>? Outcome => All<OutcomeNoted>() is { Count: > 0 } outcomes ? outcomes[^1] : null;

    /// <summary>One line an entry, by when it happened; withdrawn ones too, marked.</summary>
    public IReadOnlyList<TimelineLine> Timeline => timeline.Value;

    /// <summary>Files from which readings were taken in, by the time of their first row.</summary>
    public IReadOnlyList<ImportedFile> Imports => [.. All<Observed>()
        .Where(static o => o.Event.Import is not null)
        .GroupBy(static o => o.Event.Import!.FileSha256, StringComparer.Ordinal)
        .Select(static g => new ImportedFile(
            g.Key, g.First().Event.Import!.FileName, g.Count(), g.First().Event.Import!.Rows, g.First().OccurredAt, g.Last().OccurredAt))];

    /// <summary>The course of entries.</summary>
    /// <param name="entries">Entries of one patient, in any order.</param>
    /// <returns>The course.</returns>
    public static PatientCourse Of(IEnumerable<CourseEntry> entries) => Empty.With(entries);

    /// <summary>The course with further entries.</summary>
    /// <param name="entries">Entries of the same patient, in any order; one that is there already counts once.</param>
    /// <returns>The course; this one is left as it is.</returns>
    public PatientCourse With(IEnumerable<CourseEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        return new PatientCourse(raw.AddRange(entries));
    }

    /// <summary>The events of one kind that stand, by when they happened.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <returns>The events; of two at the same time, the one entered earlier first.</returns>
    public IReadOnlyList<Logged<T>> All<T>()
        where T : CourseEvent =>
        [.. byKind[typeof(T)].Select(static e => new Logged<T>(e.Sequence, e.Now.OccurredAt, e.Now.Who, (T)e.Now.Event))];

    /// <summary>Whether a number that an event gives means an entry, be it by the number of the entry or of one of its corrections.</summary>
    /// <param name="number">The number in the event.</param>
    /// <param name="sequence">Number of the entry as first written down.</param>
    /// <returns>Whether it does.</returns>
    public bool Refers(long number, long sequence) => originalOf.TryGetValue(number, out long original) && original == sequence;

    /// <summary>Whether rows of a file stand in the record already.</summary>
    /// <param name="fileSha256">SHA-256 of the file in small hexadecimal.</param>
    /// <returns>The file as it was taken in; null where it was not.</returns>
    public ImportedFile? FindImport(string fileSha256) => Imports.FirstOrDefault(i => i.FileSha256 == fileSha256);
}
