using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Cli.Secrets;
using Cavaxis.Course.Events;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;

namespace Cavaxis.Cli.CourseVerbs;

/// <summary>A verb that writes something into a patient's course. Whoever may not write learns nothing of what is wrong with their writing.</summary>
/// <typeparam name="T">What it takes.</typeparam>
/// <param name="output">Where results go.</param>
/// <param name="secrets">Gives the password.</param>
public abstract class CourseWritingCommand<T>(CommandOutput output, SecretReader secrets) : PersonCommand<T>(output, secrets)
    where T : WritingSettings
{
    /// <summary>What whoever does this must be allowed.</summary>
    private protected virtual Verb Needs => Verb.Record;

    private protected sealed override async Task DoAsync(RecordDesk desk, T settings)
    {
        CourseVisit visit = new(desk, settings.Patient, Output);
        await visit.RequireAsync(Needs);
        DateTimeOffset? at = OptionText.Moment(settings.At, "--at");
        long? expected = settings.Version is null ? null : OptionText.Whole(settings.Version, "--version", 1, int.MaxValue);
        IReadOnlyList<CourseWriting> writings = await WritingsAsync(visit, settings, at);
        CourseWritten written = Kept(Refusal.Granted(await visit.Courses.RecordAsync(visit.Person, visit.Patient, expected ?? visit.Read, writings), visit.Patient), expected ?? visit.Read);
        Shown? after = await AfterAsync(visit, settings);
        EntrySheet[] entries = [.. written.Entries.Select(EntrySheet.Of)];
        new Shown(
            new CourseDone(written.Patient, written.Version, entries, after?.Json),
            [.. entries.Select(static e => string.Create(CultureInfo.InvariantCulture, $"{e.Entry}  {CourseWords.Time(e.OccurredAt)}  {e.Text}")), .. after?.Lines ?? []]).Print(Output, settings.Json);
    }

    /// <summary>What is to be written, all or none.</summary>
    /// <param name="visit">The course; what rests on it is read through it, and others' writing since is then a conflict.</param>
    /// <param name="settings">The options.</param>
    /// <param name="at">When it happened; null for now.</param>
    /// <returns>At least one event.</returns>
    private protected virtual async Task<IReadOnlyList<CourseWriting>> WritingsAsync(CourseVisit visit, T settings, DateTimeOffset? at) =>
        [new CourseWriting(await EventAsync(visit, settings, at), at)];

    /// <summary>The one event that is to be written.</summary>
    /// <param name="visit">The course.</param>
    /// <param name="settings">The options.</param>
    /// <param name="at">When it happened; null for now.</param>
    /// <returns>The event.</returns>
    private protected abstract Task<CourseEvent> EventAsync(CourseVisit visit, T settings, DateTimeOffset? at);

    /// <summary>What is shown afterwards.</summary>
    /// <param name="visit">The course.</param>
    /// <param name="settings">The options.</param>
    /// <returns>What is shown; null for nothing.</returns>
    private protected virtual Task<Shown?> AfterAsync(CourseVisit visit, T settings) => Task.FromResult<Shown?>(null);

    /// <summary>What was kept.</summary>
    /// <param name="outcome">What became of it.</param>
    /// <param name="expected">Version on the strength of which it was written.</param>
    /// <returns>What was kept.</returns>
    /// <exception cref="InputFaultException">It has faults.</exception>
    /// <exception cref="CommandFaultException">Others wrote meanwhile.</exception>
    private protected static CourseWritten Kept(CourseOutcome outcome, long? expected) => outcome switch
    {
        CourseWritten written => written,
        CourseRefused refused => throw new InputFaultException(refused.Faults),
        CourseConflict conflict => throw new CommandFaultException(new CommandFault(
            "changedMeanwhile", "--version", string.Create(CultureInfo.InvariantCulture, $"{expected}"), string.Create(CultureInfo.InvariantCulture, $"the version of the record now, {conflict.Version}"),
            $"Nothing was written. Others wrote: {InputFault.Shown(string.Join("; ", conflict.Lines.Select(static l => l.Text)))} Look with `course show`, then repeat it.")),
        _ => throw new InvalidOperationException($"{outcome.GetType().Name} is not an outcome of a writing."),
    };
}
