using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Web.Pages.WhatIf;

namespace Cavaxis.Web.Tests.WhatIf;

/// <summary>A source whose answers come when a test lets them.</summary>
internal sealed class SlowSource : ICirculationSource
{
    private static readonly Lazy<SettledState> Adult = new(() => CirculationSimulator.Settle(CirculationParameters.Adult));

    /// <summary>Questions that wait, by amount of their first change.</summary>
    public Dictionary<double, TaskCompletionSource> Waiting { get; } = [];

    /// <summary>Pictures that wait, by text of the case; a text that is not here is answered at once.</summary>
    public Dictionary<string, TaskCompletionSource> Opening { get; } = [];

    public async Task<RunningPicture> OpenAsync(CaseFile caseFile, string json, CannulationPlan? plan, CancellationToken given)
    {
        if (Opening.TryGetValue(json, out TaskCompletionSource? gate))
        {
            await gate.Task.WaitAsync(given);
        }

        return json == "broken"
            ? throw new InvalidOperationException("broken")
            : RunningPicture.None(json, "invented", false, string.Empty, []) with { Shown = Adult.Value };
    }

    public async Task<WhatIfOutcome> AskAsync(RunningPicture picture, IReadOnlyList<ParameterChange> changes, CancellationToken given)
    {
        if (Waiting.TryGetValue(changes[0].Amount, out TaskCompletionSource? gate))
        {
            // The answer comes even to one who has gone: the session must not show it.
            await gate.Task;
        }

        return new WhatIfOutcome(changes, new WhatIfResult([], 2, 2, 0, 0, []), null, null, "invented");
    }
}
