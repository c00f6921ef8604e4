using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Where the circulation of a case and the answers about it come from.</summary>
public interface ICirculationSource
{
    /// <summary>The circulation of a case: fitted where support runs, the plan connected where none does.</summary>
    /// <param name="caseFile">The case.</param>
    /// <param name="json">Its text, which tells it apart from others.</param>
    /// <param name="plan">The plan to connect; not looked at where support runs.</param>
    /// <param name="given">Ends the wait.</param>
    /// <returns>The picture, or one that says why there is none.</returns>
    /// <exception cref="OperationCanceledException">This window has gone away.</exception>
    Task<RunningPicture> OpenAsync(CaseFile caseFile, string json, CannulationPlan? plan, CancellationToken given);

    /// <summary>What changes do.</summary>
    /// <param name="picture">A picture with members.</param>
    /// <param name="changes">The changes.</param>
    /// <param name="given">Ends the wait.</param>
    /// <returns>The outcome.</returns>
    /// <exception cref="OperationCanceledException">This window has gone away.</exception>
    Task<WhatIfOutcome> AskAsync(RunningPicture picture, IReadOnlyList<ParameterChange> changes, CancellationToken given);
}
