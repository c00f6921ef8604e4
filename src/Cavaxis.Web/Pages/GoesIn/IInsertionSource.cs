using Cavaxis.Planning.Insertion;
using Cavaxis.Planning.Plans;

namespace Cavaxis.Web.Pages.GoesIn;

/// <summary>Where insertion studies come from.</summary>
public interface IInsertionSource
{
    /// <summary>Studies how wire and cannulae of a plan go in.</summary>
    /// <param name="question">What is asked.</param>
    /// <param name="given">Ends the wait; the study stops when the last window has gone away.</param>
    /// <returns>The study.</returns>
    /// <exception cref="OperationCanceledException">This window has gone away.</exception>
    Task<InsertionResult> StudyAsync(InsertionQuestion question, CancellationToken given);

    /// <summary>How far a study has come.</summary>
    /// <param name="question">What was asked.</param>
    /// <returns>The progress; null where it does not run.</returns>
    InsertionProgress? ProgressOf(InsertionQuestion question);

    /// <summary>The latest study of a plan.</summary>
    /// <param name="json">Text of the case.</param>
    /// <param name="plan">The plan.</param>
    /// <returns>The study; null where the plan was not tried since the workspace was started.</returns>
    InsertionResult? LatestOf(string json, CannulationPlan plan);
}
