using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Desk;

/// <summary>The plan of the open case: a quick one first, then the one with the circulation. A change of the case begins anew.</summary>
/// <param name="runner">What plans.</param>
internal sealed class PlanDesk(PlanRunner runner) : IDisposable
{
    private readonly Lock gate = new();
    private CancellationTokenSource running = new();
    private bool hasLeft;
    private CaseFile? file;
    private string json = string.Empty;
    private string? chosen;

    /// <summary>Told when anything has changed. May come on any thread.</summary>
    public event Action? Changed;

    /// <summary>The latest plan.</summary>
    public PlanningResult? Plan { get; private set; }

    /// <summary>How far it has come.</summary>
    public PlanStage Stage { get; private set; }

    /// <summary>True when it belongs to the case as it stands and to the chosen rank.</summary>
    public bool IsCurrent { get; private set; }

    /// <summary>When the running computation was begun; null when none runs.</summary>
    public DateTimeOffset? ComputingSince { get; private set; }

    /// <summary>Rank of the chosen plan.</summary>
    public int ChosenRank { get; private set; } = 1;

    /// <summary>Why nothing could be planned.</summary>
    public IReadOnlyList<InputFault> Trouble { get; private set; } = [];

    /// <summary>Forgets the plan of another patient.</summary>
    public void Clear() => (Plan, Stage, IsCurrent, ChosenRank, Trouble, chosen) = (null, PlanStage.None, false, 1, [], null);

    /// <summary>Plans a case.</summary>
    /// <param name="newFile">The case; null where it has faults: then the plan before stays, marked as old.</param>
    /// <param name="text">Its text.</param>
    public void Begin(CaseFile? newFile, string text)
    {
        (file, json, IsCurrent) = (newFile, text, false);
        Start();
    }

    /// <summary>Chooses a plan of the list. The choice stays with its devices and vessels when the ranking changes.</summary>
    /// <param name="rank">Its rank, from 1.</param>
    public void Choose(int rank)
    {
        if (rank != ChosenRank && Plan is not null && rank >= 1 && rank <= Plan.Plans.Count)
        {
            (ChosenRank, IsCurrent, chosen) = (rank, false, PlanName.Of(Plan.Plans[rank - 1]));
            Start();
        }
    }

    /// <summary>Ends the waiting for a plan. What comes afterwards, such as a change from another window, plans nothing.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            if (!hasLeft)
            {
                hasLeft = true;
                running.Cancel();
                running.Dispose();
            }
        }
    }

    private void Start()
    {
        CancellationToken until;
        lock (gate)
        {
            if (hasLeft)
            {
                return;
            }

            running.Cancel();
            running.Dispose();
            running = new CancellationTokenSource();
            until = running.Token;
        }

        (ComputingSince, Trouble) = (null, []);
        if (file is not null)
        {
            ComputingSince = TimeProvider.System.GetUtcNow();
            _ = PlanAsync(file, json, until);
        }

        Changed?.Invoke();
    }

    private async Task PlanAsync(CaseFile given, string text, CancellationToken until)
    {
        try
        {
            if (runner.Known(text, 1, circulation: true) is null)
            {
                await TakeAsync(given, text, circulation: false, until);
            }

            await TakeAsync(given, text, circulation: true, until);
        }
        catch (OperationCanceledException)
        {
            // A newer state of the case is being planned.
        }
        catch (InputFaultException fault)
        {
            (Trouble, ComputingSince) = (fault.Faults, null);
            Changed?.Invoke();
        }
    }

    /// <summary>Plans, and finds the chosen plan in the new ranking; the first where it is not among the plans any more.</summary>
    private async Task TakeAsync(CaseFile given, string text, bool circulation, CancellationToken until)
    {
        PlanningResult result = await runner.PlanAsync(given, text, 1, circulation, until);
        int rank = result.Plans.FirstOrDefault(plan => PlanName.Of(plan) == chosen)?.Rank ?? 1;
        if (rank > 1)
        {
            result = await runner.PlanAsync(given, text, rank, circulation, until);
        }

        until.ThrowIfCancellationRequested();
        ChosenRank = rank;
        Take(result, circulation ? PlanStage.Whole : PlanStage.Quick);
    }

    private void Take(PlanningResult result, PlanStage stage)
    {
        (Plan, Stage, IsCurrent) = (result, stage, true);
        if (stage == PlanStage.Whole)
        {
            ComputingSince = null;
        }

        Changed?.Invoke();
    }
}
