using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>
/// What one window asks of a circulation. The latest question wins: a newer one stops the wait for an older, whose answer is then never
/// shown. Members may be called from the window's own thread only; <see cref="Changed"/> may come on any.
/// </summary>
/// <param name="source">Where circulations and answers come from.</param>
public sealed class WhatIfSession(ICirculationSource source) : IDisposable
{
    private CancellationTokenSource opening = new();
    private CancellationTokenSource asking = new();
    private string? shown;

    /// <summary>Told when anything of it has changed.</summary>
    public event Action? Changed;

    /// <summary>The circulation; null while none is there.</summary>
    public RunningPicture? Picture { get; private set; }

    /// <summary>True while <see cref="Picture"/> belongs to an earlier state of the case.</summary>
    public bool IsStale { get; private set; }

    /// <summary>The answer to the last question; null before one.</summary>
    public WhatIfOutcome? Outcome { get; private set; }

    /// <summary>True while a circulation is being fitted or connected.</summary>
    public bool IsOpening { get; private set; }

    /// <summary>True while a question is being answered.</summary>
    public bool IsAsking { get; private set; }

    /// <summary>What went wrong in the program itself; empty where nothing did.</summary>
    public string Trouble { get; private set; } = string.Empty;

    /// <summary>Shows the circulation of a case; the same case again does nothing.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="json">Its text.</param>
    /// <param name="plan">The plan to connect where no support runs; null for none.</param>
    public async Task OpenAsync(CaseFile caseFile, string json, CannulationPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(caseFile);
        string wanted = caseFile.Running.Configuration is not null
            ? json
            : $"{json}\n{plan?.Configuration}{string.Concat(plan?.Cannulae.Select(static c => $"{c.DeviceId}{c.Side}") ?? [])}";
        if (wanted == shown)
        {
            return;
        }

        shown = wanted;
        Stop();
        IsStale = Picture is not null;
        (IsOpening, IsAsking) = (true, false);
        opening.Dispose();
        opening = new CancellationTokenSource();
        CancellationToken given = opening.Token;
        Changed?.Invoke();
        await ComputeAsync(
            async () =>
            {
                RunningPicture picture = await source.OpenAsync(caseFile, json, plan, given);
                return () => (Picture, Outcome, IsStale, Trouble) = (picture, null, false, string.Empty);
            },
            () => IsOpening = false,
            given);
    }

    /// <summary>Asks what changes do. With none the present circulation is shown again.</summary>
    /// <param name="changes">The changes.</param>
    public async Task AskAsync(IReadOnlyList<ParameterChange> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        asking.Cancel();
        asking.Dispose();
        asking = new CancellationTokenSource();
        CancellationToken given = asking.Token;
        if (Picture is not { Shown: not null } picture || changes.Count == 0)
        {
            (Outcome, IsAsking) = (null, false);
            Changed?.Invoke();
            return;
        }

        IsAsking = true;
        Changed?.Invoke();
        await ComputeAsync(
            async () =>
            {
                WhatIfOutcome outcome = await source.AskAsync(picture, changes, given);
                return () => (Outcome, Trouble) = (outcome, string.Empty);
            },
            () => IsAsking = false,
            given);
    }

    /// <summary>Stops what is being computed. What was shown before stays.</summary>
    public void Cancel()
    {
        bool wasOpening = IsOpening;
        Stop();
        (IsOpening, IsAsking) = (false, false);
        if (wasOpening)
        {
            shown = null;
        }

        Changed?.Invoke();
    }

    /// <summary>Leaves.</summary>
    public void Dispose()
    {
        Stop();
        opening.Dispose();
        asking.Dispose();
    }

    private void Stop()
    {
        opening.Cancel();
        asking.Cancel();
    }

    /// <summary>Computes; what comes out is taken, and the end told, only while it is still wanted.</summary>
    private async Task ComputeAsync(Func<Task<Action>> compute, Action end, CancellationToken given)
    {
        try
        {
            Action take = await compute();
            if (!given.IsCancellationRequested)
            {
                take();
            }
        }
        catch (OperationCanceledException)
        {
            // Something newer is wanted, or the person stopped it.
        }
#pragma warning disable CA1031 // A fault of the program must not take the page down: it is told, and the rest of the page stays usable.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            if (!given.IsCancellationRequested)
            {
                Trouble = $"It could not be computed: {fault.Message}";
            }
        }
        finally
        {
            if (!given.IsCancellationRequested)
            {
                end();
                Changed?.Invoke();
            }
        }
    }
}
