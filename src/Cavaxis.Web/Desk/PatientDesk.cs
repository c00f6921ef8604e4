using System.Text.Json.Nodes;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.CaseTexts;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Desk;

/// <summary>
/// The open patient of one window: case, faults, plan. Every change goes to the shelf at once; changes of other windows come in by
/// themselves. Members may be called from the window's own thread only; <see cref="Changed"/> may come on any.
/// </summary>
public sealed class PatientDesk : IDisposable
{
    private readonly ICaseShelf shelf;
    private readonly PlanDesk planning;
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly List<CaseConflict> conflicts = [];
    private IReadOnlyList<InputFault> storing = [];

    /// <summary>A desk with nothing on it.</summary>
    /// <param name="shelf">Where cases are kept.</param>
    /// <param name="runner">What plans them.</param>
    public PatientDesk(ICaseShelf shelf, PlanRunner runner)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        this.shelf = shelf;
        planning = new PlanDesk(runner);
        planning.Changed += Tell;
        shelf.Changed += OnShelfChanged;
    }

    /// <summary>Told when anything that the desk shows has changed. May come on any thread.</summary>
    public event Action? Changed;

    /// <summary>Identifier of the open patient; null when none is open.</summary>
    public string? Id => Version?.Id;

    /// <summary>The version shown.</summary>
    public CaseVersion? Version { get; private set; }

    /// <summary>The case as text that is being filled in.</summary>
    public CaseDraft Draft { get; private set; } = CaseDraft.Empty;

    /// <summary>What the reader of case files says to it.</summary>
    public CaseCheck Check { get; private set; } = new(null, []);

    /// <summary>The case; null where it has faults.</summary>
    public CaseFile? Case => Check.Case;

    /// <summary>The latest plan. Where <see cref="IsPlanCurrent"/> is false it belongs to an earlier state of the case.</summary>
    public PlanningResult? Plan => planning.Plan;

    /// <summary>How far the plan has come.</summary>
    public PlanStage Stage => planning.Stage;

    /// <summary>True when <see cref="Plan"/> belongs to the case as it stands.</summary>
    public bool IsPlanCurrent => planning.IsCurrent;

    /// <summary>When the running computation was begun; null when none runs.</summary>
    public DateTimeOffset? ComputingSince => planning.ComputingSince;

    /// <summary>Rank of the plan that drawing, steps and next measurements speak of.</summary>
    public int ChosenRank => planning.ChosenRank;

    /// <summary>The chosen plan; null where there is none.</summary>
    public CannulationPlan? Chosen => Plan is { ChosenPlan: > 0 } plan ? plan.Plans[plan.ChosenPlan - 1] : null;

    /// <summary>Why nothing could be planned or saved; empty where all is well.</summary>
    public IReadOnlyList<InputFault> Trouble => [.. storing, .. planning.Trouble];

    /// <summary>Fields that another window changed at the same time, not decided yet.</summary>
    public IReadOnlyList<CaseConflict> Conflicts => conflicts;

    /// <summary>Opens a patient, or brings the open one up to date.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>False where there is no such patient.</returns>
    public async Task<bool> OpenAsync(string id)
    {
        if (Id == id)
        {
            return true;
        }

        try
        {
            if (await shelf.OpenAsync(id) is not CaseVersion version)
            {
                return false;
            }

            conflicts.Clear();
            storing = [];
            planning.Clear();
            Show(version);
            return true;
        }
        catch (InputFaultException fault)
        {
            storing = fault.Faults;
            return false;
        }
    }

    /// <summary>Sets one field and saves it.</summary>
    /// <param name="path">Path of the field, as <see cref="CaseDraft.With"/> takes it.</param>
    /// <param name="seen">The value that stood there when the person began to change it; null for none.</param>
    /// <param name="wanted">The value; null for none.</param>
    /// <returns>True when it is saved; false when it became a conflict or the store refused it.</returns>
    public Task<bool> SetAsync(string path, JsonNode? seen, JsonNode? wanted) => InTurnAsync(async () =>
    {
        while (Version is CaseVersion from)
        {
            JsonNode? there = Draft.At(path);
            if (JsonNode.DeepEquals(there, wanted))
            {
                return true;
            }

            if (!JsonNode.DeepEquals(there, seen))
            {
                conflicts.RemoveAll(c => c.Path == path);
                conflicts.Add(new CaseConflict(path, there, wanted));
                return false;
            }

            SaveOutcome outcome = await shelf.SaveAsync(from.Id, Draft.With(path, wanted).Json, from.Number, path);
            storing = [];
            Show(outcome.Newest);
            if (outcome.Saved)
            {
                return true;
            }
        }

        return false;
    });

    /// <summary>Replaces the case as a whole.</summary>
    /// <param name="json">The text: a JSON object.</param>
    /// <param name="from">Number of the version that it was made from.</param>
    /// <param name="change">What happened, in words.</param>
    /// <returns>True when it is saved.</returns>
    public Task<bool> ReplaceAsync(string json, long from, string change) => InTurnAsync(async () =>
    {
        if (Id is not string id)
        {
            return false;
        }

        SaveOutcome outcome = await shelf.SaveAsync(id, json, from, change);
        storing = [];
        if (!outcome.Saved)
        {
            conflicts.Clear();
            conflicts.Add(new CaseConflict(string.Empty, JsonValue.Create(outcome.Newest.Json), JsonValue.Create(json)));
        }

        Show(outcome.Newest);
        return outcome.Saved;
    });

    /// <summary>Decides a conflict.</summary>
    /// <param name="conflict">One that stood among <see cref="Conflicts"/>; where other values have come meanwhile, nothing is decided.</param>
    /// <param name="keepMine">True to save the value of this window, false to leave that of the other.</param>
    public async Task DecideAsync(CaseConflict conflict, bool keepMine)
    {
        ArgumentNullException.ThrowIfNull(conflict);

        // A field that is saved twice, after a pause and when it is left, finds its conflict twice; the button may still belong to the first.
        if (conflicts.RemoveAll(conflict.AsksTheSameAs) == 0 || !keepMine)
        {
            Tell();
        }
        else if (conflict.Path.Length > 0)
        {
            await SetAsync(conflict.Path, conflict.Theirs, conflict.Mine);
        }
        else if (Version is CaseVersion version && conflict.Mine is JsonNode mine)
        {
            await ReplaceAsync(mine.GetValue<string>(), version.Number, "case as a whole, over a newer version");
        }
    }

    /// <summary>Chooses the plan that drawing, steps and next measurements speak of.</summary>
    /// <param name="rank">Its rank, from 1.</param>
    public void Choose(int rank) => planning.Choose(rank);

    /// <summary>Leaves the desk; the shelf keeps what was saved.</summary>
    public void Dispose()
    {
        shelf.Changed -= OnShelfChanged;
        planning.Changed -= Tell;
        planning.Dispose();
    }

    private void Tell() => Changed?.Invoke();

    // A task, not "async void": what goes wrong while this window follows another must not end the program for everybody.
    private void OnShelfChanged(string id, long number)
    {
        if (id == Id && number > Version?.Number)
        {
            _ = FollowAsync(id, number);
        }
    }

    private Task<bool> FollowAsync(string id, long number) => InTurnAsync(async () =>
    {
        if (number > Version?.Number && await shelf.OpenAsync(id) is CaseVersion newest)
        {
            Show(newest);
        }

        return true;
    });

    /// <summary>One thing after the other: a fault of the store is told, and every end of work.</summary>
    private async Task<bool> InTurnAsync(Func<Task<bool>> work)
    {
        await turn.WaitAsync();
        try
        {
            return await work();
        }
        catch (InputFaultException fault)
        {
            storing = fault.Faults;
            return false;
        }
        finally
        {
            turn.Release();
            Tell();
        }
    }

    private void Show(CaseVersion version)
    {
        if (version == Version)
        {
            return;
        }

        bool same = version.Json == Version?.Json;
        Version = version;
        if (same)
        {
            return;
        }

        Draft = CaseDraft.Of(version.Json);
        Check = CaseCheck.Of(version.Json);
        planning.Begin(Check.Case, version.Json);
    }
}
