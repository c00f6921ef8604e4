using Cavaxis.Bedside.Courses;
using Cavaxis.Course.Events;
using Cavaxis.Course.Imports;
using Cavaxis.Course.Patients;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Desk;

/// <summary>
/// The course of the open patient in one window. What others write comes in by itself; what is written here on the strength of an older state is not kept,
/// and the person sees what the others wrote. Members may be called from the window's own thread only; <see cref="Changed"/> may come on any.
/// </summary>
public sealed class CourseDesk : IDisposable
{
    private readonly WorkspaceRecord record;
    private readonly IPersonHere here;
    private readonly SemaphoreSlim turn = new(1, 1);
    private string? id;

    /// <summary>A desk with nothing on it.</summary>
    /// <param name="record">The record.</param>
    /// <param name="here">Who is here.</param>
    public CourseDesk(WorkspaceRecord record, IPersonHere here)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(here);
        (this.record, this.here) = (record, here);
        record.Store.Changed += OnStoreChanged;
    }

    /// <summary>Told when anything that the desk shows has changed. May come on any thread.</summary>
    public event Action? Changed;

    /// <summary>The course as read; null where none is open.</summary>
    public CourseReading? Reading { get; private set; }

    /// <summary>The course; an empty one where none is open.</summary>
    public PatientCourse Course => Reading?.Course ?? PatientCourse.Empty;

    /// <summary>Why the last thing was not read or written; empty where all is well.</summary>
    public IReadOnlyList<InputFault> Trouble { get; private set; } = [];

    /// <summary>What others wrote first, where that kept the last thing from being written.</summary>
    public IReadOnlyList<TimelineLine> Meanwhile { get; private set; } = [];

    /// <summary>The moment, as the record counts it.</summary>
    public DateTimeOffset Now => record.Clock.GetUtcNow();

    /// <summary>Opens a patient's course.</summary>
    /// <param name="patient">Identifier, from the address.</param>
    /// <returns>False where there is no such patient for whoever is here.</returns>
    public async Task<bool> OpenAsync(string patient)
    {
        if (id == patient && Reading is not null)
        {
            return true;
        }

        (id, Reading, Trouble, Meanwhile) = (patient, null, [], []);
        await InTurnAsync(ReadAsync);
        return Reading is not null;
    }

    /// <summary>Writes what depends on what the person saw: a step, a choice, the end of something.</summary>
    /// <param name="writings">What happened.</param>
    /// <returns>True when it is kept.</returns>
    public Task<bool> WriteAsync(params IReadOnlyList<CourseWriting> writings) => WriteAsync(Reading?.Version, writings);

    /// <summary>Writes what holds whatever others wrote, such as a value read from a monitor.</summary>
    /// <param name="writings">What happened.</param>
    /// <returns>True when it is kept.</returns>
    public Task<bool> NoteAsync(params IReadOnlyList<CourseWriting> writings) => WriteAsync(null, writings);

    /// <summary>Takes in the good rows of a file.</summary>
    /// <param name="import">The file as read and seen by the person.</param>
    /// <returns>True when they are kept.</returns>
    public Task<bool> TakeInAsync(ObservationImport import) =>
        OutcomeAsync(async () => await new FileImports(record.Courses).TakeInAsync(await here.NowAsync(), id ?? string.Empty, import));

    /// <summary>Takes an entry back as entered in error.</summary>
    /// <param name="entry">Its number.</param>
    /// <param name="reason">Why.</param>
    /// <returns>True when that is kept.</returns>
    public Task<bool> WithdrawAsync(long entry, string reason) => WriteAsync(new CourseWriting(new EntryWithdrawn { Reason = reason }, null, entry));

    /// <summary>Leaves the record.</summary>
    public void Dispose()
    {
        record.Store.Changed -= OnStoreChanged;
        turn.Dispose();
    }

    private Task<bool> WriteAsync(long? expected, IReadOnlyList<CourseWriting> writings) =>
        OutcomeAsync(async () => await record.Courses.RecordAsync(await here.NowAsync(), id ?? string.Empty, expected, writings));

    private Task<bool> OutcomeAsync(Func<Task<PatientAnswer<CourseOutcome>>> write) => InTurnAsync(async () =>
    {
        (Trouble, Meanwhile) = ([], []);
        PatientAnswer<CourseOutcome> answer = await write();
        switch (answer.Value)
        {
            case CourseWritten:
                await ReadAsync();
                return true;
            case CourseConflict conflict:
                Meanwhile = conflict.Lines;
                await ReadAsync();
                return false;
            case CourseRefused refused:
                Trouble = refused.Faults;
                return false;
            default:
                throw RecordFault.Of(answer.Decision, id ?? string.Empty);
        }
    });

    private async Task<bool> ReadAsync()
    {
        PatientAnswer<CourseReading> answer = await record.Courses.ReadAsync(await here.NowAsync(), id!);
        Reading = answer.Decision == AccessDecision.Granted ? answer.Value : null;
        if (answer.AuditFault is { } unkept)
        {
            Trouble = [new InputFault(FaultCode.UnreadableFile, "audit", unkept.Found, "room for the note that this record was read", unkept.Remedy)];
        }

        return Reading is not null;
    }

    // A task, not "async void": what goes wrong while this window follows another must not end the program for everybody.
    private void OnStoreChanged(StreamName stream, long version)
    {
        if (id is string patient && stream.Area == PatientRecords.Area && stream.Id.Text == patient && version > Reading?.Version)
        {
            _ = InTurnAsync(async () => version <= Reading?.Version || await ReadAsync());
        }
    }

    /// <summary>One thing after the other: a refusal is told, and every end of work.</summary>
    private async Task<bool> InTurnAsync(Func<Task<bool>> work)
    {
        try
        {
            await turn.WaitAsync();
        }
        catch (ObjectDisposedException)
        {
            return false;
        }

        try
        {
            return await RecordFault.InAsync(work);
        }
        catch (InputFaultException fault)
        {
            Trouble = fault.Faults;
            return false;
        }
        finally
        {
            turn.Release();
            Changed?.Invoke();
        }
    }
}
