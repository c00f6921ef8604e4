using Cavaxis.Arteries.Findings;
using Cavaxis.Arteries.Tree;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Arterial;
using Cavaxis.Planning.Plans;
using Cavaxis.Reports.ArterialReports;
using Cavaxis.Reports.Drawings;
using Cavaxis.Web.Desk;
using Cavaxis.Web.Frame;
using Cavaxis.Web.Pages.WhatIf;
using Cavaxis.Web.Questions;
using Microsoft.AspNetCore.Components;

namespace Cavaxis.Web.Pages.Blood;

/// <summary>The page "Who gets which blood?": the arterial tree on support, where the two flows meet, and the legs.</summary>
public sealed partial class BloodPage
{
    private static readonly string[] Offered = ["flow", "contractility", "resistance", "balloon"];
    private static readonly TimeSpan BetweenSteps = TimeSpan.FromMilliseconds(700);

    /// <summary>Steps that another question brought along, as <c>key:steps</c> with commas between.</summary>
    [SupplyParameterFromQuery]
    public string? Steps { get; set; }

    private CancellationTokenSource work = new();
    private BloodQuestion? running;
    private BloodPicture? picture;
    private IReadOnlyList<Stepper> steppers = [];
    private string sheet = string.Empty;
    private string trouble = string.Empty;
    private string? opened;
    private int turn;
    private bool left;

    private ArterialSupportResult? Result => picture?.Answer.Result;

    private string? Progress => running is not BloodQuestion now ? null
        : Source.ProgressOf(now) is double share ? FormattableString.Invariant($"Computing the arteries, {100 * share:F0} %…") : "Finding the circulation that it stands on…";

    private bool IsStale => running is not null || opened != Desk.Version?.Json;

    private OrganReading? Heart => Result?.Organs.FirstOrDefault(static o => o.Organ == ArterialOrgan.Heart);

    private IReadOnlyList<ArterialSweepPoint> Sweep => picture is { Answer: { } answer } ? answer.Sweep : [];

    private IReadOnlyList<LookNext> Next =>
    [
        new("What if the heart or the pump changes: the whole circulation", Question.Of("whatif")!.Address(Id)),
        new("Write down what was sampled, and from which arm", Question.Of("run")!.Address(Id)),
    ];

    private string HowSure => Result is { } r
        ? $"Calculated for arteries of this patient's size. {ArterialText.Interval(r.Organs[0].MeanSaturationPercent)} is the interval with what is uncertain; a sample from the artery decides."
        : string.Empty;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await base.OnParametersSetAsync();
        OnDesk();
    }

    /// <inheritdoc/>
    protected override void OnDesk()
    {
        // A quick plan may still change places with another: it is waited for, unless support runs.
        if (left || Desk is not { Case: { } file, Version: { } version } || opened == version.Json)
        {
            return;
        }

        if (file.Running.Configuration is not null || Desk is { Stage: PlanStage.Whole, IsPlanCurrent: true })
        {
            opened = version.Json;
            steppers = [];
            _ = AskAsync();
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        left = true;
        work.Cancel();
        work.Dispose();
        base.Dispose(disposing);
    }

    private async Task StepAsync((string Key, bool Up) step)
    {
        steppers = [.. steppers.Select(s => s.Control.Key == step.Key ? s.Stepped(step.Up) : s)];
        int mine = ++turn;
        await Task.Delay(BetweenSteps);
        if (mine == turn && !left)
        {
            await AskAsync();
        }
    }

    private async Task BackAsync()
    {
        turn++;
        steppers = [.. steppers.Select(static s => s with { Steps = 0 })];
        await AskAsync();
    }

    private void Stop()
    {
        work.Cancel();
        running = null;
    }

    private Task SweepAsync() => AskAsync(around: true);

    private async Task AskAsync(bool around = false)
    {
        if (left || Desk is not { Case: { } file, Version: { } version })
        {
            return;
        }

        await work.CancelAsync();
        work.Dispose();
        work = new CancellationTokenSource();
        CancellationToken given = work.Token;
        CannulationPlan? plan = file.Running.Configuration is null ? Desk.Chosen : null;
        BloodQuestion question = new(file, version.Json, plan, [.. steppers.Select(static s => s.Change()).OfType<ParameterChange>()], around);
        (running, trouble) = (question, string.Empty);
        _ = TellAsync(given);
        try
        {
            BloodPicture found = await Source.AskAsync(question, given);
            given.ThrowIfCancellationRequested();
            Take(found);
            if (question.Changes.Count == 0 && steppers.Any(static s => s.IsChanged))
            {
                // The steps could not be counted before the circulation was there.
                await AskAsync();
                return;
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

    private void Take(BloodPicture found)
    {
        picture = found;
        ArteriesAnswer answer = found.Answer;
        sheet = answer.Result is null ? string.Empty : SvgWriter.Write(ArterialSheet.Of(answer), "arteries");
        if (steppers.Count == 0 && found.Circulation.Shown is { } shown)
        {
            IReadOnlyDictionary<string, int> brought = StepsInAddress.Read(Steps);
            steppers = [.. ControlTable.For(shown.Parameters, found.Circulation.ReferenceSpeedPerMin)
                .Where(c => Offered.Contains(c.Key) || brought.ContainsKey(c.Key))
                .Select(c => Stepper.Of(c, shown.Parameters).SteppedBy(brought.GetValueOrDefault(c.Key)))];
        }
    }

    private static string N(double value, string format) => value.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
}
