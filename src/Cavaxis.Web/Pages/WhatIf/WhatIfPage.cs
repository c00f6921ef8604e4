using Cavaxis.Circulation.Calibration;
using Cavaxis.Web.Desk;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>The page "What if?": the circulation as it runs, and what changes would do.</summary>
public sealed partial class WhatIfPage
{
    private static readonly TimeSpan BetweenSteps = TimeSpan.FromMilliseconds(600);
    private static readonly TimeSpan BeforeProgress = TimeSpan.FromSeconds(1);

    private WhatIfSession? session;
    private WhatIfView? view;
    private RunningPicture? viewed;
    private WhatIfOutcome? viewedOutcome;
    private IReadOnlyList<Stepper> steppers = [];
    private string progress = string.Empty;
    private bool late;
    private int turn;

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            session = new WhatIfSession(Source);
            session.Changed += OnSession;
            Open();
        }
    }

    /// <inheritdoc/>
    protected override void OnDesk() => Open();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (session is not null)
        {
            session.Changed -= OnSession;
            session.Dispose();
        }

        base.Dispose(disposing);
    }

    // A plan is connected when its ranking stands: the quick plan may still change places with another.
    private void Open()
    {
        if (session is not null && Desk is { Case: { } file, Version: { } version })
        {
            bool ready = file.Running.Configuration is not null || Desk is { Stage: PlanStage.Whole, IsPlanCurrent: true };
            if (ready)
            {
                _ = session.OpenAsync(file, version.Json, Desk.Chosen);
            }

            Progress(ready ? null : "Waiting for the plan…");
        }
    }

    private void OnSession() => _ = InvokeAsync(() =>
    {
        Take();
        Progress(null);
        StateHasChanged();
    });

    private void Take()
    {
        if (session is null || (ReferenceEquals(viewed, session.Picture) && ReferenceEquals(viewedOutcome, session.Outcome)))
        {
            return;
        }

        bool other = !ReferenceEquals(viewed, session.Picture);
        (viewed, viewedOutcome) = (session.Picture, session.Outcome);
        view = viewed is { Shown: not null } picture ? WhatIfView.Of(picture, viewedOutcome, Id) : null;
        if (other && viewed is { Shown: { } shown } fresh)
        {
            // The case has changed under the steps: they stay as far as they go, and are asked again.
            IReadOnlyList<Stepper> before = steppers;
            steppers = [.. ControlTable.For(shown.Parameters, fresh.ReferenceSpeedPerMin).Select(c => Kept(Stepper.Of(c, shown.Parameters), before))];
            if (steppers.Any(static s => s.IsChanged))
            {
                _ = Ask();
            }
        }
    }

    private static Stepper Kept(Stepper fresh, IReadOnlyList<Stepper> before) =>
        fresh.SteppedBy(before.FirstOrDefault(s => s.Control.Key == fresh.Control.Key)?.Steps ?? 0);

    private async Task Step((string Key, bool Up) step)
    {
        steppers = [.. steppers.Select(s => s.Control.Key == step.Key ? s.Stepped(step.Up) : s)];
        int mine = ++turn;
        await Task.Delay(BetweenSteps);
        if (mine == turn)
        {
            await Ask();
        }
    }

    private async Task Back()
    {
        turn++;
        steppers = [.. steppers.Select(static s => s with { Steps = 0 })];
        await Ask();
    }

    private Task Ask() => session?.AskAsync([.. steppers.Select(static s => s.Change()).OfType<ParameterChange>()]) ?? Task.CompletedTask;

    private void Stop() => session?.Cancel();

    // A word that flashes up and goes disturbs: it is told after a second.
    private void Progress(string? waiting)
    {
        string now = waiting
            ?? (session?.IsOpening == true ? "Fitting the circulation to what is known…" : session?.IsAsking == true ? "Asking every patient that fits…" : string.Empty);
        if (now == progress)
        {
            return;
        }

        (progress, late) = (now, false);
        if (now.Length > 0)
        {
            _ = TellLater(now);
        }
    }

    private async Task TellLater(string words)
    {
        await Task.Delay(BeforeProgress);
        await InvokeAsync(() =>
        {
            if (progress == words)
            {
                late = true;
                StateHasChanged();
            }
        });
    }

    private string BloodAddress => Questions.Question.Of("blood")!.Address(Id) + StepsInAddress.Write(steppers);

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
