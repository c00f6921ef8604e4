using Cavaxis.Devices.Wires;
using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.InsertionReports;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Frame;
using Cavaxis.Web.Questions;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>The page "How does it go in?": wire and cannulae of the chosen plan on their way, played in three dimensions.</summary>
public sealed partial class GoesInPage
{
    /// <summary>Enough to see what is common, few enough to wait for; the command line takes as many as one likes.</summary>
    private const int Anatomies = 24;


    private readonly Dictionary<WireClass, InsertionResult> studies = [];
    private readonly Dictionary<WireClass, InsertionResult> otherwise = [];
    private ElementReference stage;
    private IJSObjectReference? module;
    private IJSObjectReference? drawing;
    private CancellationTokenSource work = new();
    private CannulationPlan? studiedPlan;
    private InsertionQuestion? running;
    private WireClass wire = WireClass.Stiff;
    private int cannulaAt;
    private int playAt;
    private string sheet = string.Empty;
    private string trouble = string.Empty;
    private string? loaded;
    private bool flat;
    private bool left;

    private InsertionResult? Shown => studies.GetValueOrDefault(wire);

    private CannulaInsertion? Cannula => Shown is { Cannulae.Count: > 0 } study ? study.Cannulae[Math.Min(cannulaAt, study.Cannulae.Count - 1)] : null;

    private IReadOnlyList<WireClass> Missing => [.. Enum.GetValues<WireClass>().Where(w => !studies.ContainsKey(w))];

    private IReadOnlyList<InsertionAdvice> Otherwise => otherwise.GetValueOrDefault(wire)?.Cannulae.FirstOrDefault(c => c.Role == Cannula?.Role)?.Advice ?? [];

    private string? Progress => running is not InsertionQuestion asked ? null
        : Source.ProgressOf(asked) is { All: > 0 } now
            ? FormattableString.Invariant($"Trying the {Word(asked.Wire)} wire{(asked.Otherwise ? " and what is done otherwise" : string.Empty)}: {now.Done} of {now.All} insertions…")
            : $"Trying the {Word(asked.Wire)} wire…";

    private string WouldChange => studies.Count < 2
        ? "Another wire, a deeper wire, the other side: tried below. Measuring the bend between the cavae."
        : string.Join(" ", studies.Where(s => s.Key != wire && s.Value.EveryCannulaRight is not null).OrderByDescending(static s => s.Value.EveryCannulaRight!.Value).Take(2)
            .Select(static s => $"{Entry.WordLabel.Capital(Word(s.Key))} wire: {GoesInWords.Share(s.Value.EveryCannulaRight!)}."));

    private IReadOnlyList<LookNext> Next =>
    [
        new("Steps with these pitfalls, on paper", Question.Of("paper")!.Address(Id)),
        .. Desk.Plan is { NextMeasurements.Count: > 0 } plan ? [Ways.MeasurementField.Next(plan.NextMeasurements[0], Id)] : Array.Empty<LookNext>(),
    ];

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await base.OnParametersSetAsync();
        OnDesk();
    }

    /// <inheritdoc/>
    protected override void OnDesk()
    {
        if (Desk is { Chosen: CannulationPlan plan, Stage: PlanStage.Whole, IsPlanCurrent: true } && plan != studiedPlan)
        {
            studiedPlan = plan;
            studies.Clear();
            otherwise.Clear();

            // The drawing goes with the study before; the next one is put into a new place of the page.
            _ = LeaveAsync(drawing);
            (cannulaAt, playAt, loaded, drawing) = (0, 0, null, null);
            Begin();
        }
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (left || Cannula is not { Plays.Count: > 0 } cannula || Shown is null)
        {
            return;
        }

        int at = Math.Min(playAt, cannula.Plays.Count - 1);
        string name = FormattableString.Invariant($"{wire}-{cannula.Role}-{at}");
        if (loaded == name)
        {
            return;
        }

        loaded = name;
        try
        {
            PlayPacket packet = await Task.Run(() => PlayPacket.Of(name, cannula.Plays[at], cannula));
            module ??= await Script.InvokeAsync<IJSObjectReference>("import", $"./{Assets["built/insertion.js"]}");
            drawing ??= await module.InvokeAsync<IJSObjectReference>("mount", stage);
            await drawing.InvokeVoidAsync("load", packet.Head, packet.Points, packet.Normals, packet.Corners, packet.Paths, packet.Wires);
        }
        catch (JSDisconnectedException)
        {
            // The window was closed.
        }
        catch (JSException)
        {
            // The script is not there or cannot run: the two views to scale say the same.
            flat = true;
            StateHasChanged();
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        left = true;
        work.Cancel();
        work.Dispose();
        _ = LeaveAsync(drawing);
        base.Dispose(disposing);
    }

    private void Begin() => _ = WorkAsync([wire], aside: false);

    private Task CompareAsync() => WorkAsync(Missing, aside: false);

    private Task OtherwiseAsync() => WorkAsync([wire], aside: true);

    private void Stop()
    {
        work.Cancel();
        running = null;
    }

    private async Task WorkAsync(IReadOnlyList<WireClass> wires, bool aside)
    {
        await work.CancelAsync();
        work.Dispose();
        work = new CancellationTokenSource();
        CancellationToken given = work.Token;
        if (Desk is not { Case: { } file, Version: { } version, Plan: { } planning, Chosen: { } plan })
        {
            return;
        }

        trouble = string.Empty;
        _ = TellAsync(given);
        try
        {
            foreach (WireClass one in wires)
            {
                running = new InsertionQuestion(file, version.Json, planning, plan, one, Anatomies, aside);
                InsertionResult result = await Source.StudyAsync(running, given);
                given.ThrowIfCancellationRequested();
                (aside ? otherwise : studies)[one] = result;
                sheet = one == wire && result.Cannulae.Count > 0 ? SvgWriter.Write(InsertionSheet.Of(result), "insertion") : sheet;
                await InvokeAsync(StateHasChanged);
            }
        }
        catch (OperationCanceledException)
        {
            return;
        }
#pragma warning disable CA1031 // A fault of the program must not take the page down: it is told, and the rest of the page stays usable.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            trouble = $"It could not be computed: {fault.Message}";
        }

        running = null;
        await work.CancelAsync();
        if (!left)
        {
            await InvokeAsync(StateHasChanged);
        }
    }

    private void ChooseWire(WireClass chosen)
    {
        (wire, playAt) = (chosen, 0);
        sheet = Shown is { Cannulae.Count: > 0 } study ? SvgWriter.Write(InsertionSheet.Of(study), "insertion") : string.Empty;
    }

    private void ShowCannula(int index) => (cannulaAt, playAt) = (index, 0);

    private void ShowPlay(int index) => playAt = index;

    private static async Task LeaveAsync(IJSObjectReference? drawing)
    {
        try
        {
            if (drawing is not null)
            {
                await drawing.InvokeVoidAsync("leave");
            }
        }
        catch (JSDisconnectedException)
        {
            // The window was closed, and the drawing with it.
        }
    }

    private static string Named(CannulaInsertion cannula) => $"{PlainWords.Role(cannula.Role)}, {PlainWords.Vessel(cannula.Route, cannula.Side)}";

    private static string Word(WireClass wire) => PlainWords.FromName(wire.ToString());

    private static string Percent(double share) => (share * 100).ToString("F0", System.Globalization.CultureInfo.InvariantCulture);

    private static string N(int count) => count.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
