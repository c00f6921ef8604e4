using Cavaxis.Web.Desk;
using Microsoft.AspNetCore.Components;

namespace Cavaxis.Web.Frame;

/// <summary>What every page of one patient does: opens the patient of its address on the desk and follows what changes there.</summary>
public abstract class PatientPage : ComponentBase, IDisposable
{
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

    private void OnDeskChanged() => _ = InvokeAsync(() =>
    {
        OnDesk();
        StateHasChanged();
    });
}
