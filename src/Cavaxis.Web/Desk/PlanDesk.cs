using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Desk;

/// <summary>The plan of the open case: a quick one first, then the one with the circulation. A change of the case begins anew.</summary>
/// <param name="runner">What plans.</param>
internal sealed class PlanDesk(PlanRunner runner) : IDisposable
{
    private CancellationTokenSource running = new();
    private CaseFile? file;
    private string json = string.Empty;

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
    public void Clear() => (Plan, Stage, IsCurrent, ChosenRank, Trouble) = (null, PlanStage.None, false, 1, []);

    /// <summary>Plans a case.</summary>
    /// <param name="newFile">The case; null where it has faults: then the plan before stays, marked as old.</param>
    /// <param name="text">Its text.</param>
    public void Begin(CaseFile? newFile, string text)
    {
        (file, json, IsCurrent) = (newFile, text, false);
        Start();
    }

    /// <summary>Chooses a plan of the list.</summary>
    /// <param name="rank">Its rank, from 1.</param>
    public void Choose(int rank)
    {
        if (rank != ChosenRank && Plan is not null && rank >= 1 && rank <= Plan.Plans.Count)
        {
            (ChosenRank, IsCurrent) = (rank, false);
            Start();
        }
    }

    /// <summary>Ends the waiting for a plan.</summary>
    public void Dispose()
    {
        running.Cancel();
        running.Dispose();
    }

    private void Start()
    {
        running.Cancel();
        running.Dispose();
        running = new CancellationTokenSource();
        (ComputingSince, Trouble) = (null, []);
        if (file is not null)
        {
            ComputingSince = TimeProvider.System.GetUtcNow();
            _ = PlanAsync(file, json, ChosenRank, running.Token);
        }

        Changed?.Invoke();
    }

    private async Task PlanAsync(CaseFile given, string text, int rank, CancellationToken until)
    {
        try
        {
            if (runner.Known(text, rank, circulation: true) is null)
            {
                Take(await runner.PlanAsync(given, text, rank, circulation: false, until), PlanStage.Quick, until);
            }

            Take(await runner.PlanAsync(given, text, rank, circulation: true, until), PlanStage.Whole, until);
        }
        catch (OperationCanceledException)
        {
            // A newer state of the case is being planned.
        }
        catch (InputFaultException fault) when (rank > 1 && fault.Faults is [{ Field: "plan" }])
        {
            // The list has become shorter than the rank that was chosen.
            ChosenRank = 1;
            Start();
        }
        catch (InputFaultException fault)
        {
            (Trouble, ComputingSince) = (fault.Faults, null);
            Changed?.Invoke();
        }
    }

    private void Take(PlanningResult result, PlanStage stage, CancellationToken until)
    {
        until.ThrowIfCancellationRequested();
        (Plan, Stage, IsCurrent) = (result, stage, true);
        if (stage == PlanStage.Whole)
        {
            ComputingSince = null;
        }

        Changed?.Invoke();
    }
}
