using Cavaxis.Web.Desk;
using Microsoft.AspNetCore.Components;

namespace Cavaxis.Web.Frame;

/// <summary>What every page of one patient does: opens the patient of its address on the desk and follows what changes there.</summary>
public abstract class PatientPage : ComponentBase, IDisposable
{
    private static readonly TimeSpan BetweenWords = TimeSpan.FromMilliseconds(500);

    /// <summary>Identifier of the patient, from the address.</summary>
    [Parameter]
    public string Id { get; set; } = string.Empty;

    /// <summary>The open patient of this window.</summary>
    [Inject]
    public PatientDesk Desk { get; private set; } = null!;

    /// <summary>False where the address names no patient on the shelf.</summary>
    protected bool IsFound { get; private set; } = true;

    /// <summary>Leaves the desk to others.</summary>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => Desk.Changed += OnDeskChanged;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync() => IsFound = await Desk.OpenAsync(Id);

    /// <summary>Called on the window's own thread after the desk has changed, before the page is drawn again.</summary>
    protected virtual void OnDesk()
    {
    }

    /// <summary>Ends what the page began.</summary>
    /// <param name="disposing">True when called by <see cref="Dispose()"/>.</param>
    protected virtual void Dispose(bool disposing) => Desk.Changed -= OnDeskChanged;

    /// <summary>Draws the page again and again while work runs, so that it tells how far the work is.</summary>
    /// <param name="given">Ends with the work.</param>
    /// <returns>A task that ends with it.</returns>
    protected async Task TellAsync(CancellationToken given)
    {
        using PeriodicTimer clock = new(BetweenWords);
        try
        {
            while (await clock.WaitForNextTickAsync(given))
            {
                await InvokeAsync(StateHasChanged);
            }
        }
        catch (OperationCanceledException)
        {
            // The work is done.
        }
    }

    private void OnDeskChanged() => _ = InvokeAsync(() =>
    {
        OnDesk();
        StateHasChanged();
    });
}
